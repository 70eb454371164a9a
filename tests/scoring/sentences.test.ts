import { describe, expect, test } from 'vitest';
import type { Hop, RunEvent } from '../../src/lib/model';
import { describeTry, type Goal } from '../../src/lib/scoring';
import { tied } from '../tied';
import { challengeOf, gradedAs, resultOf } from './results';

const hop = (height_m: number): Hop => ({ t_s: 1, length_m: 0.2, height_m, duration_s: 0.4 });
const bite: RunEvent = { t_s: 1, kind: 'bite', bite: 'tap' };
const touch: RunEvent = { t_s: 1, kind: 'bottom' };
const snag: RunEvent = { t_s: 1, kind: 'snag', stone: 0 };
const freed: RunEvent = { t_s: 2, kind: 'freed', by: 'shake' };

const hops: Goal = { kind: 'hops', count: 1, height_m: [0.0762, 0.2032] };
const strike: Goal = { kind: 'strike', within_s: 2 };
const first: Goal = { kind: 'bottom_first', within_s: 2 };
const free: Goal = { kind: 'freed' };

interface Made {
  hops?: Hop[];
  events?: RunEvent[];
  /** The rod sweeps firmly, this long after the start. */
  sweep_s?: number;
}

function made({ hops: flights = [], events = [], sweep_s = Infinity }: Made) {
  const result = resultOf({ contact: new Array<1>(500).fill(1) });
  const tip_x_m = result.trace.t_s.map(
    (t_s) => 2 - Math.min(0.6, Math.max(0, 2 * (t_s - sweep_s)))
  );
  return { ...result, hops: flights, events, trace: { ...result.trace, tip_x_m } };
}

describe('the first sentence answers what was asked', () => {
  const golden: [Goal, Made, string][] = [
    [hops, {}, 'It never hopped.'],
    [hops, { hops: [hop(0.127)] }, 'It rose 5~in; 3~in to 8~in was asked.'],
    [
      hops,
      { hops: [hop(0.127), hop(0.035), hop(0.03), hop(0.015)] },
      'Hopped once, 5~in high, and twice too low to count; 3~in to 8~in was asked.'
    ],
    [hops, { hops: [hop(0.4)] }, 'It rose 1~ft~4~in; 3~in to 8~in was asked.'],
    [hops, { hops: [hop(0.207)] }, 'It rose just over 8~in; 3~in to 8~in was asked.'],
    [
      hops,
      { hops: [hop(0.1), hop(0.127)] },
      'Hopped twice, not once, 4~in to 5~in high; 3~in to 8~in was asked.'
    ],
    [first, { events: [touch] }, 'You never moved the rod.'],
    [first, { events: [touch], sweep_s: 2 }, 'You moved the rod 1~s after it was down.'],
    [
      first,
      { events: [{ ...touch, t_s: 3 }], sweep_s: 1 },
      'You moved the rod 2~s before it was down.'
    ],
    [strike, { events: [bite] }, 'It bit, and you never set.'],
    [strike, { events: [bite], sweep_s: 2 }, 'You set 1.3~s after the bite.'],
    [strike, {}, 'Nothing bit, and you left it alone.'],
    [strike, { sweep_s: 2 }, 'You set, and this cast had no fish.'],
    [free, {}, 'The jig never hung.'],
    [free, { events: [snag] }, 'The jig still hangs.'],
    [free, { events: [snag, freed] }, 'The jig hung, and you freed it.']
  ];
  test.each(golden)('%j of %j', (goal, run, sentence) => {
    const challenge = challengeOf([{ ...goal, weight: 100 }]);
    const { did } = describeTry(challenge, gradedAs(challenge, made(run)), 'imperial');
    expect(did).toBe(tied(sentence));
  });

  test('and says nothing of the bottom to who was asked for a hook set or a free hook', () => {
    for (const goal of [strike, free]) {
      const challenge = challengeOf([{ ...goal, weight: 100 }]);
      expect(describeTry(challenge, gradedAs(challenge, made({})), 'imperial').why).toBe('');
    }
  });

  test('and a snag that never hung gets no advice for one that hangs', () => {
    const challenge = challengeOf([{ ...free, weight: 100 }]);
    const { change } = describeTry(challenge, gradedAs(challenge, made({})), 'imperial');
    expect(change).toMatch(/^Move the rod on until the jig hangs\./);
    const over = { ...made({}), stones: [{ index: 0, touched: true }] };
    const slid = describeTry(challenge, gradedAs(challenge, over), 'imperial');
    expect(slid.change).toMatch(/^Pull more firmly into the rock: here you want it hung\./);
  });
});
