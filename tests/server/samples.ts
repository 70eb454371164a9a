import { findChallenge, loadLessons } from '../../src/lib/course';
import type { RodInput } from '../../src/lib/model';
import type { Challenge } from '../../src/lib/scoring';
import type { Assignment } from '../../src/lib/wire';

export const sampleChallenge: Challenge = findChallenge(
  'exactly-one-foot',
  loadLessons()
) as Challenge;

export const sampleTask: Assignment = {
  title: 'Before Saturday',
  from: '',
  note: 'Slowly.',
  lessons: ['one-foot'],
  challenges: [sampleChallenge],
  objectives: ['season'],
  questions: 2,
  tries: 3,
  phase: 'half_seen',
  due: '2031-05-09'
};

/** A hand that turns the rod evenly from where the challenge starts, by so many degrees in so long. */
export function evenHand(challenge: Challenge, turn_deg: number, duration_s: number): RodInput {
  const { elevation_deg, azimuth_deg } = challenge.start;
  const samples = Math.round(duration_s * 100);
  const turned = Array.from(
    { length: samples },
    (_, i) => azimuth_deg + (turn_deg * i) / (samples - 1)
  );
  return { kind: 'rod_input', rate_Hz: 100, elevation_deg, azimuth_deg: turned };
}
