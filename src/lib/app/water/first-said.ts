import { simulateScenario } from '$lib/model';
import { comparedText } from '$lib/sandbox';
import type { Units } from '$lib/scoring';
import { comparedSideOf, FIRST_PAIRS, movesToCompare, variantsOf } from './choices';

/** What is said of the two runs that are shown first. For the build, which writes it down. */
export function firstSaid(): Record<Units, string> {
  const [sweep] = movesToCompare(null, []);
  const saidIn = (units: Units) => {
    const [first, second] = FIRST_PAIRS.weight.map((id) => {
      const variant = variantsOf('weight', []).find((one) => one.id === id);
      if (!variant) throw new Error(`compare: there is no weight ${id}`);
      const side = comparedSideOf(sweep, variant, units);
      const { setup, move, hold_s } = side;
      return { side, result: simulateScenario({ ...setup, move, hold_s }) };
    });
    return comparedText([first.side, second.side], [first.result, second.result], units);
  };
  return { imperial: saidIn('imperial'), metric: saidIn('metric') };
}
