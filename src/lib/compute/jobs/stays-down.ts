import { quickest } from '../../course/contact-limit';
import { shownDrag } from '../../course/items/moves';
import { isOffBottom, parseScenario, ScenarioError, simulate, type SetupInput } from '../../model';
import { cornersOf, type Unknowns } from '../../scoring';

/** Counts that are tried for a drag, s: beyond the last nobody counts. */
const COUNTS_S: readonly number[] = [1, 2, 3, 4, 5, 6, 8, 10, 12];

/**
 * The quickest count for a low drag of the tip at which the jig stays down in each of these setups,
 * whatever is unknown; null for none.
 */
export function quickestCount(
  setups: readonly SetupInput[],
  tip_m: number,
  unknowns?: Unknowns
): number | null {
  const isDown = (count_s: number) =>
    setups.every((setup) => staysDown(setup, tip_m, count_s, unknowns));
  return quickest(COUNTS_S, isDown) ?? null;
}

/** The corner in which a jig is lifted most, that of a big jig that planes, is mostly the last. */
function staysDown(
  given: SetupInput,
  tip_m: number,
  count_s: number,
  unknowns: Unknowns | undefined
): boolean {
  try {
    const { setup, move, hold_s } = shownDrag(given, tip_m, count_s);
    const scenario = parseScenario({ ...setup, move, hold_s });
    const all = [...cornersOf(scenario, unknowns).reverse(), scenario];
    return all.every((one) => !isOffBottom(simulate(one).peak_height_m));
  } catch (error) {
    if (error instanceof ScenarioError || error instanceof RangeError) return false;
    throw error;
  }
}
