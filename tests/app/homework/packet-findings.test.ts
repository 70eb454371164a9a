import { expect, test } from 'vitest';
import { packetFindings } from '../../../src/lib/app/homework/packet-findings';
import { ownGearId } from '../../../src/lib/practice';
import { evenHand, sampleChallenge, sampleTask } from '../../server/samples';

const course = [sampleChallenge];
const at = '2031-05-01T08:00:00.000Z';
const tried = (turn_deg: number) => ({
  challenge: 0,
  at,
  input: evenHand(sampleChallenge, turn_deg, 2)
});
const of = (assignment: typeof sampleTask, ...turns: number[]) =>
  packetFindings({ assignment, tries: turns.map(tried) }, course, 'imperial');

test('a result of what the course asks, in any gear, each try its own, is not remarked on', () => {
  expect(of(sampleTask, 9, 10, 11)).toEqual([]);
  const own = { ...sampleChallenge, id: ownGearId(sampleChallenge.id, 'abcdefgh') };
  expect(of({ ...sampleTask, challenges: [own] }, 9)).toEqual([]);
});

test('looser goals are named with what the course asks', () => {
  const goals = sampleChallenge.goals.map((goal) =>
    goal.kind === 'travel' ? { ...goal, band_m: goal.band_m * 4 } : goal
  );
  const [finding, ...others] = of(
    { ...sampleTask, challenges: [{ ...sampleChallenge, goals }] },
    9
  );
  expect(others).toEqual([]);
  expect(finding).toMatch(
    /^“Drag it one foot” asks for something different from the course: travel .*The course asks for travel /
  );
});

test('one move that stands there twice is said', () => {
  expect(of(sampleTask, 9, 10, 9)).toEqual([
    '“Drag it one foot”: 1 of 3 tries is the exact same move as another.'
  ]);
});

test('a challenge that the course has not is said', () => {
  const stray = { ...sampleChallenge, id: 'of-my-own', title: 'My own' };
  expect(of({ ...sampleTask, challenges: [stray] })).toEqual([
    '“My own” is no challenge of this course.'
  ]);
});
