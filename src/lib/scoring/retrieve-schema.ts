import * as v from 'valibot';
import { number, whole } from './schema-parts';

const MOST_S = 120;

/** Lowest, then highest. */
function range(most: number) {
  return v.pipe(
    v.tuple([number(0, most), number(0, most)]),
    v.check(([low, high]) => low < high, 'must be lowest, then highest')
  );
}

/** Schemas of the goals of retrieves (see RetrieveGoal), each with its weight. */
export function retrieveGoals<W extends v.GenericSchema<number>>(weight: W) {
  return [
    v.strictObject({ kind: v.literal('pace'), m_s: range(20), weight }),
    v.strictObject({
      kind: v.literal('swim'),
      height_m: range(30),
      least: number(0.01, 1),
      weight
    }),
    v.strictObject({ kind: v.literal('stayed'), most_m: number(0.01, 30), weight }),
    v.strictObject({ kind: v.literal('twitches'), count: whole(1, 50), weight }),
    v.strictObject({
      kind: v.literal('rests'),
      count: whole(1, 50),
      least_s: number(1, MOST_S),
      weight
    }),
    v.strictObject({ kind: v.literal('rhythm'), even: v.boolean(), weight }),
    v.strictObject({ kind: v.literal('bottom_first'), within_s: number(0.1, MOST_S), weight }),
    v.strictObject({ kind: v.literal('tight'), least_N: number(0.001, 100), weight }),
    v.strictObject({ kind: v.literal('swing'), most_m: number(0.01, 30), weight }),
    v.strictObject({ kind: v.literal('freed'), weight }),
    v.strictObject({ kind: v.literal('strike'), within_s: number(0.1, MOST_S), weight })
  ] as const;
}
