import { describe, expect, test } from 'vitest';
import { FOOT_M, INCH_M } from '../../src/lib/model';
import {
  describeTry,
  gradeRun,
  guessWords,
  typedLength_m,
  type Challenge,
  type Guess,
  type Units
} from '../../src/lib/scoring';
import { challengeOf, resultOf } from './results';

const oneFoot = challengeOf([{ kind: 'travel', target_m: FOOT_M, band_m: 0.05, weight: 100 }]);
const twoFeet = challengeOf([{ kind: 'travel', target_m: 0.6096, band_m: 0.0762, weight: 100 }]);
const hop = challengeOf([{ kind: 'hops', count: 1, height_m: [0.05, 0.15], weight: 100 }]);

/** What is read of a try that was called so: its first sentence, its call, and what to change. */
function read(
  challenge: Challenge,
  call: Guess,
  made: Parameters<typeof resultOf>[0],
  units: Units
) {
  const result = resultOf(made);
  const grade = gradeRun(challenge, { move: challenge.reference, result, call });
  return {
    grade,
    said: guessWords(call, result, units, challenge.goals),
    ...describeTry(challenge, { result, grade }, units)
  };
}

/** Lengths as a reader takes them, m: 1 ft 2¼ in, 9¾ in, 36.5 cm. */
function lengthsIn(words: string): number[] {
  const found = words.match(/[\d.]+[¼½¾]?\s(ft|in|cm|m)(\s\d*[¼½¾]?\sin)?|[¼½¾]\sin/g) ?? [];
  return found.map((one) => typedLength_m(one, 'in') ?? NaN);
}

const STEP_M: Record<Units, number> = { imperial: INCH_M, metric: 0.01 };

describe.each(['imperial', 'metric'] as const)('in %s', (units) => {
  /** Whole ones, as most are said, and such as are not. */
  const called = [4, 9.5, 11, 12, 14, 20.25, 30].map(
    (n) => n * STEP_M[units] * (units === 'metric' ? 2.5 : 1)
  );

  test.each([
    ['one foot', oneFoot],
    ['two feet', twoFeet]
  ])('a call’s miss is the difference of the lengths that are told: %s', (_, challenge) => {
    let told = 0;
    for (const travel_m of called)
      for (let way_m = 0.06; way_m < 0.75; way_m += 0.0037) {
        const call = { kind: 'travel', travel_m } as const;
        const { said, change, did } = read(challenge, call, { travel_m: way_m }, units);
        const [said_m, went_m] = lengthsIn(said);
        const miss = /^Your call was (just over |a hair over )?(.*) too (long|short)\./.exec(
          change
        );
        if (!miss) continue;
        told++;
        const [off_m] = lengthsIn(miss[2]);
        const where = `${said} ${change} ${did}`;
        const apart_m = Math.abs(said_m - went_m);
        if (miss[1]) expect(apart_m, where).toBeLessThan(off_m + 1e-9);
        else expect(Math.abs(apart_m - off_m), where).toBeLessThan(1e-6);
        expect(miss[3], where).toBe(travel_m > way_m ? 'long' : 'short');
      }
    expect(told).toBeGreaterThan(50);
  });

  test('a jig’s way is told alike in the call and in the sentence beside it', () => {
    for (let way_m = 0.2; way_m < 0.42; way_m += 0.0013) {
      const call = { kind: 'travel', travel_m: 100 * STEP_M[units] } as const;
      const { said, did } = read(oneFoot, call, { travel_m: way_m }, units);
      const [, went] = /; it went (.*)\.$/.exec(said) ?? [];
      expect(did).toContain(`the jig ${went}`);
    }
  });

  test('a height’s miss is the difference of the heights that are told', () => {
    for (const height_m of called)
      for (let peak_height_m = 0.05; peak_height_m < 0.15; peak_height_m += 0.0017) {
        const made = { peak_height_m, hopHeights_m: [peak_height_m], travel_m: 0.2 };
        const { said, change } = read(hop, { kind: 'height', height_m }, made, units);
        const miss = /^Your call was (.*) too (high|low): it rose (.*)\. /.exec(change);
        if (!miss || miss[1] === 'a hair') continue;
        const [said_m, rose_m] = lengthsIn(said);
        expect(
          Math.abs(Math.abs(said_m - rose_m) - lengthsIn(miss[1])[0]),
          `${said} ${change}`
        ).toBeLessThan(1e-6);
        expect(said).toContain(`it rose ${miss[3]}.`);
      }
  });
});

test('a call is told as it was said', () => {
  const call = { kind: 'travel', travel_m: 10.5 * INCH_M } as const;
  expect(read(oneFoot, call, { travel_m: 0.3 }, 'imperial').said).toMatch(
    /^You said 10½\sin; it went /
  );
});
