import { quickest } from '../../course/contact-limit';
import { shownDrag } from '../../course/items/moves';
import {
  INCH_M,
  isOffBottom,
  parseScenario,
  ScenarioError,
  simulate,
  type Scenario,
  type SetupInput
} from '../../model';
import { cornersOf, type Unknowns } from '../../scoring';

/** Counts that are tried for a drag, s: beyond the last nobody counts. */
const COUNTS_S: readonly number[] = [1, 2, 3, 4, 5, 6, 8, 10, 12];
const SLOWEST_S = COUNTS_S[COUNTS_S.length - 1];

/**
 * Mud lets a jig that has rested on it go with a jump, however slowly it is pulled: so much of its height,
 * m, is the mud's and not the hand's. More is a lift. Common practice, no source.
 */
const MOST_JUMP_M = 3 * INCH_M;

/**
 * The quickest count for a low drag of the tip at which the jig stays down in each of these setups,
 * whatever is unknown, but for what mud makes it jump; null for none.
 */
export function quickestCount(
  setups: readonly SetupInput[],
  tip_m: number,
  unknowns?: Unknowns
): number | null {
  const isDown = (count_s: number) =>
    setups.every((setup, i) => {
      const runs = dragsOf(setup, tip_m, count_s, unknowns);
      return runs.length > 0 && runs.every((run, n) => staysDown(run, jumps_m[i][n]));
    });
  const jumps_m = setups.map((setup) => jumpsOf(setup, tip_m, unknowns));
  return quickest(COUNTS_S, isDown) ?? null;
}

const staysDown = (run: Scenario, jump_m = 0) => !isOffBottom(simulate(run).peak_height_m - jump_m);

/** How far mud makes it jump in each of a drag's runs, m; none elsewhere. */
function jumpsOf(setup: SetupInput, tip_m: number, unknowns: Unknowns | undefined): number[] {
  if (setup.bottom?.ground?.kind !== 'mud') return [];
  const slowest = dragsOf(setup, tip_m, SLOWEST_S, unknowns);
  return slowest.map((run) => Math.min(MOST_JUMP_M, simulate(run).peak_height_m));
}

/**
 * The drag as it is said and in each corner of what is unknown; none for one that cannot be run. The corner
 * in which a jig is lifted most, that of a big jig that planes, is mostly the last, and so goes first.
 */
function dragsOf(
  given: SetupInput,
  tip_m: number,
  count_s: number,
  unknowns: Unknowns | undefined
): Scenario[] {
  try {
    const { setup, move, hold_s } = shownDrag(given, tip_m, count_s);
    const scenario = parseScenario({ ...setup, move, hold_s });
    return [...cornersOf(scenario, unknowns).reverse(), scenario];
  } catch (error) {
    if (error instanceof ScenarioError || error instanceof RangeError) return [];
    throw error;
  }
}
