import { expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';
import { FOOT_M } from '../../src/lib/model';
import { inUnits } from '../../src/lib/scoring';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
/** A sum that holds give or take a few inches is asked with answers that far apart, ft. */
const APART_FT = 1;
/** What a sweep brings is within two inches of the sum, ft. */
const OF_SUM_FT = 2 / 12;

const asked = (source: string) => sampled(SEEDS, 6).map((seed) => [source, seed] as const);

test.each(asked('bait-way-of-slow-drag'))(
  '%s: wrong ones lie a foot or more off, and are told by how much slack takes, seed %i',
  (source, seed) => {
    const { options, key } = itemOf(source, seed).answer as ChooseAnswer;
    const feet = (one?: { value?: number }) => (one?.value ?? NaN) / FOOT_M;
    const right = feet(options.find(({ id }) => id === key));
    for (const { id, value, reply } of options) {
      if (id === key) continue;
      expect(Math.abs(feet({ value }) - right)).toBeGreaterThanOrEqual(APART_FT - OF_SUM_FT);
      expect(reply).not.toContain('nudge');
    }
  }
);

test.each(asked('tip-way-for-one-foot'))(
  '%s: wrong ones lie a foot or more off, seed %i',
  (source, seed) => {
    const { options, key } = itemOf(source, seed).answer as ChooseAnswer;
    const tip = ({ says }: { says: string }) => {
      const [, feet = '', half] =
        /(\d+)(½)? ft/.exec(inUnits(says, 'imperial').replaceAll('\u00a0', ' ')) ?? [];
      return Number(feet) + (half ? 0.5 : 0);
    };
    const right = tip(options.find(({ id }) => id === key) ?? { says: '' });
    for (const one of options)
      if (one.id !== key) expect(Math.abs(tip(one) - right)).toBeGreaterThanOrEqual(APART_FT);
  }
);
