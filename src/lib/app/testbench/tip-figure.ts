import type { DragFigure } from '$lib/compute/jobs/card';
import type { FitResult } from '$lib/fit';
import { FOOT_M, type SetupInput } from '$lib/model';
import { formatDepth, formatLength, type Units } from '$lib/scoring';
import type { TestSession } from '$lib/wire';

/** The tip's way that is said, m: a foot, or a round length near it. */
const TIP_M: Record<Units, number> = { imperial: FOOT_M, metric: 0.3 };
/** How far out the jig lies in the water that is asked for, m: 45 ft, or 14 m. */
const OUT_M: Record<Units, number> = { imperial: 45 * FOOT_M, metric: 14 };

/** What is asked of the model: the gear as the tests found it, in water of another depth. */
export function tipAsked(
  { gear }: Pick<TestSession, 'gear'>,
  { spread }: Pick<FitResult, 'spread'>,
  depth_m: number,
  units: Units
) {
  const { reach_m, slack_m, drag_area_m2, lift_to_drag } = spread.middle;
  const setup: SetupInput = {
    ...gear,
    water: { ...gear.water, depth_m },
    rod: { ...gear.rod, ...(reach_m !== undefined && { length_m: reach_m }) },
    bait: {
      ...gear.bait,
      ...(drag_area_m2 !== undefined && { drag_area_m2 }),
      ...(lift_to_drag !== undefined && { lift_to_drag })
    },
    start: { bait_x_m: OUT_M[units], slack_m: slack_m ?? gear.start.slack_m }
  };
  return { setup, tip_m: TIP_M[units], spread };
}

/** "1 ft of tip moves the jig 11 in ± 1 in at 18 ft, 45 ft out with 2 in of slack." */
export function tipText(
  figure: DragFigure,
  { water, start }: Pick<SetupInput, 'water' | 'start'>,
  units: Units
): string {
  const { depth_m } = water;
  const at = formatDepth(depth_m, units);
  if (!figure.came) return `This rod can’t do it at ${at}.`;
  const [came, half] = figure.came.map((m) => formatLength(m, units));
  const lifts = figure.lifts ? ' It may leave the bottom.' : '';
  const tip = formatLength(TIP_M[units], units);
  const out = formatDepth(start.bait_x_m, units);
  const slack =
    start.slack_m === undefined ? '' : ` with ${formatLength(start.slack_m, units)} of slack`;
  return `${tip} of tip moves the jig ${came} ± ${half} at ${at}, ${out} out${slack}.${lifts}`;
}
