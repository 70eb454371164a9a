import { expect, test } from 'vitest';
import { itemOf, type OrderAnswer } from '../../src/lib/course/items';
import { figuresOf } from '../../src/lib/course/items/figures';
import { shownScenarioOf } from '../../src/lib/course/items/measure';
import { MEASURES } from '../../src/lib/course/items/measures';
import { inUnits } from '../../src/lib/scoring';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
/** Of a lift that takes a second an hour or less guides see so many times the model's height. Common practice, no source. */
const QUICK_S_AN_HOUR = 1;
const QUICK_SEEN = 1.4;

const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');
const hourOf = (clock: string) => Number(clock.replace(':30', '.5'));

function paceOf(ask: string, says: string): number {
  const [, from = '', to = ''] = /(\d+)(?: o’clock)? to (\d+(?::30)?)/.exec(`${says} ${ask}`) ?? [];
  const [, s = ''] = /in (half a|[\d½]+) second/.exec(says) ?? [];
  return (s === 'half a' ? 0.5 : Number(s.replace('½', '.5'))) / (hourOf(to) - hourOf(from));
}

/** Heights in the order that is asked for: as the model has them, and as guides see them, m. */
function heightsIn(source: string, seed: number) {
  const { ask, answer, cases, explain } = itemOf(source, seed);
  const { key, things } = answer as OrderAnswer;
  const rows = key.map((id) => {
    const says = things.find((one) => one.id === id)?.says ?? '';
    const run = cases.find(({ caption }) => caption === says)?.run;
    if (!run) throw new Error(`no run of ${says}`);
    const model_m = figuresOf(shownScenarioOf(run)).peak_height_m;
    const isQuick = paceOf(read(ask), read(says)) <= QUICK_S_AN_HOUR;
    return { says: read(says), isQuick, model_m, seen_m: model_m * (isQuick ? QUICK_SEEN : 1) };
  });
  return { rows, explain };
}

test.each(
  (
    [
      ['order-paces', 3],
      ['order-weights-hop', 6]
    ] as const
  ).flatMap(([id, most]) => sampled(SEEDS, most).map((seed) => [id, seed] as const))
)(
  '%s: guides, who see a quick lift go higher, rank them as the model does, seed %i',
  (source, seed) => {
    const { rows, explain } = heightsIn(source, seed);
    for (const [i, low] of rows.slice(1).entries())
      for (const by of ['model_m', 'seen_m'] as const)
        expect(rows[i][by] - low[by], `${rows[i].says} before ${low.says}`).toBeGreaterThan(
          MEASURES.peak_height_m.apart
        );
    const isBoth = rows.some(({ isQuick }) => isQuick) && !rows.every(({ isQuick }) => isQuick);
    expect(explain.includes('On a quick lift guides see more height than the model.')).toBe(isBoth);
  }
);
