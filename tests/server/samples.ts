import { findChallenge, loadLessons } from '../../src/lib/course';
import { itemOf } from '../../src/lib/course/items';
import { MODEL_VERSION, type RodInput } from '../../src/lib/model';
import { gradeTry, type Challenge } from '../../src/lib/scoring';
import type { Assignment, SubmittedAnswer, SubmittedTry } from '../../src/lib/wire';

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

/** When what is sent below was made. */
export const SENT_AT = '2031-05-01T08:00:00.000Z';

/** A try at the sample challenge by an even hand; its marks as they are, or as said. */
export function tried(id: string, turn_deg: number, marks?: number): SubmittedTry {
  const input = evenHand(sampleChallenge, turn_deg, 3);
  const { grade } = gradeTry(sampleChallenge, input);
  const challenge = sampleChallenge.id;
  return {
    kind: 'try',
    id: id.padEnd(16, '0'),
    challenge,
    input,
    model: MODEL_VERSION,
    at: SENT_AT,
    marks: marks ?? grade.marks
  };
}

/** An answer to a question about the season, which needs no run of the model. */
export function answered(id: string, item: string, isRight: boolean): SubmittedAnswer {
  const { answer } = itemOf(item, 7);
  if (answer.form !== 'choose') throw new Error(answer.form);
  const given = answer.options.find((one) => (one.id === answer.key) === isRight)?.id ?? '';
  return {
    ...{ kind: 'answer', id: id.padEnd(16, '0'), item, seed: 7, given },
    ...{ right: isRight, report: 'knew', model: MODEL_VERSION, at: SENT_AT }
  };
}
