import { expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';
import { figuresOf } from '../../src/lib/course/items/figures';
import { shownScenarioOf } from '../../src/lib/course/items/measure';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 12 }, (_, i) => i + 1);
/** How far guides see a lift from nine bring the jig by each hour, ft. Common practice, no source. */
const GUIDES_FT: Readonly<Record<string, number>> = {
  '8': 0,
  '9': 0,
  '10': 1,
  '11': 2.25,
  '12': 6
};

function guidesBy_ft(clock: string): number {
  const [hour, half] = clock.split(':');
  const next = GUIDES_FT[`${Number(hour) + 1}`] ?? 0;
  return half ? (GUIDES_FT[hour] + next) / 2 : GUIDES_FT[hour];
}

function guides_ft(says: string): number {
  const [, from = '', to = ''] = /^from (\S+) to (\S+)$/.exec(says) ?? [];
  return guidesBy_ft(to) - guidesBy_ft(from);
}

test.each(sampled(SEEDS, 5))(
  'model and guides move the jig alike, a third apart, seed %i',
  (seed) => {
    const { ask, answer, cases } = itemOf('hour-of-most-travel', seed);
    const { options, key } = answer as ChooseAnswer;
    const right = options.find(({ id }) => id === key)?.says ?? '';
    const model_m = (says: string) => {
      const shown = cases.find(({ caption }) => caption === says);
      return shown ? figuresOf(shownScenarioOf(shown.run)).travel_m : NaN;
    };
    const isMost = ask.includes('farthest');
    for (const { says } of options.filter(({ id }) => id !== key)) {
      const [more, less] = isMost ? [right, says] : [says, right];
      expect(guides_ft(more), `${more} against ${less}`).toBeGreaterThanOrEqual(
        (4 / 3) * guides_ft(less)
      );
      expect(model_m(more), `${more} against ${less}`).toBeGreaterThanOrEqual(
        (4 / 3) * model_m(less)
      );
    }
  }
);
