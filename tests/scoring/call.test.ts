import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { LAZY_CALLS, lazyCall } from '../../src/lib/course/lazy-calls';
import { held, inTurn, lift, pause } from '../../src/lib/course/retrieves/moves';
import { callReached } from '../../src/lib/scoring/call-words';
import { HAIR } from '../../src/lib/scoring/fading';
import { travelGoalOf } from '../../src/lib/scoring/goals';
import {
  asksCall,
  canBeCalled,
  CALL_MARKS,
  describeTry,
  gradeRun,
  gradeTry,
  PASS_MARK,
  REFERENCE_MARK,
  trueCall,
  type Challenge,
  type Guess
} from '../../src/lib/scoring';

function challengeNamed(id: string): Challenge {
  const found = findChallenge(id, allLessons());
  if (!found) throw new Error(`no challenge ${id}`);
  return found;
}

/** The reference move, called so. */
function called(id: string, guess?: Guess | null) {
  const challenge = challengeNamed(id);
  const graded = gradeTry(challenge, challenge.reference, guess);
  return { ...graded, change: describeTry(challenge, graded, 'imperial', null).change };
}

const TWO_FEET = { kind: 'travel', travel_m: 0.61, lifted: false } as const;

describe('a call that was asked for', () => {
  test('passes with a right move and a right call only, and says what the call was', () => {
    expect(called('two-feet-unseen', TWO_FEET).grade).toMatchObject({ marks: 100, passed: true });
    const long = called('two-feet-unseen', { ...TWO_FEET, travel_m: 1.52 });
    expect(long.grade).toMatchObject({ marks: 100 - CALL_MARKS, passed: false });
    expect(long.change).toMatch(/^Your call was .* too long\. /);
    const lifted = called('two-feet-unseen', { ...TWO_FEET, lifted: true });
    expect(lifted.grade.passed).toBe(false);
    expect(lifted.change).toMatch(/^You said it lifted; it stayed down\. /);
    expect(called('two-feet-unseen', null).grade.passed).toBe(false);
  });

  test('wrong by its length and by its lift is told both, and one fix', () => {
    const both = called('two-feet-unseen', { ...TWO_FEET, travel_m: 1.52, lifted: true });
    expect(both.change).toMatch(
      /^You said it lifted; it stayed down\. Your call was also .* too long\. Go by how far the tip moved\.$/
    );
    const lifted = called('two-feet-unseen', { ...TWO_FEET, lifted: true });
    expect(lifted.change).not.toContain('Your call');
  });

  test('of a fall is whether it was down', () => {
    const down = (isDown: boolean) => called('count-a-lighter-one', { kind: 'down', isDown });
    expect(down(true).grade).toMatchObject({ marks: 100, passed: true });
    expect(down(false).grade.passed).toBe(false);
    expect(down(false).change).toMatch(/^You said still falling; it was on the bottom\. /);
  });

  test('of a hop is its height', () => {
    const at = (by: number) => {
      const height_m = called('offshore-hop').result.peak_height_m * by;
      return called('offshore-hop', { kind: 'height', height_m });
    };
    expect(at(1.1).grade.passed).toBe(true);
    expect(at(4).grade.passed).toBe(false);
    expect(at(4).change).toMatch(/^Your call was .* too high: it rose .*\. /);
  });

  test('leaves the marks of the move as they are where none was asked for', () => {
    const { grade } = called('two-feet-unseen');
    expect(grade.call).toBeNull();
    expect(grade.passed).toBe(true);
  });

  test('saves no move that failed, and its fix comes first', () => {
    const challenge = challengeNamed('two-feet-unseen');
    const { result } = gradeTry(challenge, challenge.beginner);
    const call = trueCall(challenge, result);
    const failed = { move: challenge.beginner, result };
    const { marks } = gradeRun(challenge, failed);
    expect(gradeRun(challenge, { ...failed, call })).toMatchObject({ marks, passed: false });
  });

  test.each([
    ['nothing', 8, 0],
    ['a few marks', 10.8, 24]
  ])('that was wrong says so where the move left %s to take', (_, wait_s, most) => {
    const challenge = challengeNamed('thirty-feet-down');
    const move = inTurn(held(45), pause(wait_s), lift(45, 20, 1));
    const said = (isDown: boolean) => {
      const { call } = gradeTry(challenge, move, { kind: 'down', isDown }).grade;
      return call && callReached(call);
    };
    const left = gradeTry(challenge, move).grade.marks;
    expect(left === 0).toBe(most === 0);
    expect(left).toBeLessThanOrEqual(most);
    expect([said(true), said(false)]).toEqual(['wrong', 'right']);
  });

  test('passes nothing that is farther off than may be by more than a hair, and says wrong', () => {
    const { result } = called('two-feet-unseen');
    const challenge = challengeNamed('two-feet-unseen');
    const band_m = travelGoalOf(challenge)?.band_m ?? NaN;
    const at = (bands: number) => {
      const call = { ...TWO_FEET, travel_m: result.travel_m + bands * band_m };
      const grade = gradeRun(challenge, { move: challenge.reference, result, call });
      return { passed: grade.passed, says: grade.call && callReached(grade.call) };
    };
    expect(at(0.99)).toEqual({ passed: true, says: 'right' });
    expect(at(1 + 0.8 * HAIR)).toEqual({ passed: true, says: 'a bit off' });
    for (const bands of [1 + 1.1 * HAIR, 1.3, -1.3, 1.7, 2, 5])
      expect(at(bands), `${bands} bands`).toEqual({ passed: false, says: 'wrong' });
  });

  test('loses marks smoothly with how far it is off', () => {
    const { result } = called('two-feet-unseen');
    const challenge = challengeNamed('two-feet-unseen');
    let before = 100;
    // A five-hundredth of what may be off, since most is lost within a tenth of that.
    for (let off_m = 0; off_m < 0.25; off_m += 0.0002) {
      const call = { ...TWO_FEET, travel_m: result.travel_m + off_m };
      const { marks } = gradeRun(challenge, { move: challenge.reference, result, call });
      expect(before - marks).toBeGreaterThanOrEqual(0);
      expect(before - marks).toBeLessThanOrEqual(1);
      before = marks;
    }
    expect(before).toBe(100 - CALL_MARKS);
  });
});

test('every challenge that asks for a call fails its lazy ones and passes the true one', () => {
  const asking = allLessons().flatMap(({ id, challenges }) =>
    ['your-hands-ruler', 'from-the-boat', 'offshore'].includes(id)
      ? challenges.filter((one) => one.visibility !== 'seen' && asksCall(one))
      : []
  );
  expect(asking.length).toBeGreaterThan(5);
  for (const challenge of asking) {
    const { result } = gradeTry(challenge, challenge.reference);
    const marksOf = (call: Guess | null) =>
      gradeRun(challenge, { move: challenge.reference, result, call }).marks;
    expect(marksOf(trueCall(challenge, result)), challenge.id).toBeGreaterThanOrEqual(
      REFERENCE_MARK
    );
    for (const name of LAZY_CALLS)
      expect(marksOf(lazyCall(name, challenge, result)), `${challenge.id}: ${name}`).toBeLessThan(
        PASS_MARK
      );
  }
});

test('when the rod moved is asked of who moved it', () => {
  const count = challengeNamed('count-a-lighter-one');
  const never = gradeTry(count, {
    kind: 'lift',
    from_deg: count.start.elevation_deg,
    to_deg: count.start.elevation_deg,
    duration_s: 9
  });
  expect(canBeCalled('down', never.result)).toBe(false);
  expect(canBeCalled('travel', never.result)).toBe(true);
  expect(canBeCalled('down', gradeTry(count, count.beginner).result)).toBe(true);
});
