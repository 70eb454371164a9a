import { runsOf } from '../../claims';
import type { ShownRun } from '../../lesson';
import { lowRun } from '../../lessons/runs';
import { allLessons } from '../../load';
import { inTurn, reel, sweep } from '../../retrieves/moves';
import { BIG_TRAILER_M2, drawGear, ft, inch, oz, SMALL_TRAILER_M2 } from '../draw';
import { SHOWN } from '../fixed/shown';
import { fall, shownDrag, shownHops, shownLift, swingDown } from '../moves';

const middling = () => 0.5;
const water = drawGear(middling, { depth_m: ft(15), cast_m: ft(36), slack_m: inch(1) });
const far = drawGear(middling, { depth_m: ft(15), cast_m: ft(60), slack_m: inch(0.5) });
const under = drawGear(middling, { depth_m: ft(15), cast_m: ft(6), slack_m: 0, mass_kg: oz(1) });
const falls = (depth_m: number) => fall({ ...water, water: { ...water.water, depth_m } }, 45);
const tied = (ounces: number, drag_area_m2: number, depth_m = ft(15)) =>
  fall(
    { ...water, water: { ...water.water, depth_m }, bait: { mass_kg: oz(ounces), drag_area_m2 } },
    90
  );
const lifted = (ounces: number) =>
  shownLift({ ...water, bait: { ...water.bait, mass_kg: oz(ounces) } }, 10, 12, 1);
const softTip = { ...far, rod: { ...far.rod, tip_stiffness_N_per_m: 4 } };
const braid = { ...far, line: { material: 'braid', diameter_m: 0.0002 } } as const;

/** Runs that no question shows and that stand behind what several of them say. */
const proofs = (): Readonly<Record<string, ShownRun>> => ({
  'a shallow fall': falls(ft(5)),
  'half of a fall': falls(ft(15)),
  'a fall twice as deep': falls(ft(30)),
  'a drag too soon': {
    ...shownDrag(water, ft(2), 2),
    setup: swingDown(water, 0).setup,
    hold_s: 0
  },
  'reeled in on tight line': lowRun(water, inTurn(sweep(60, 60, 0.1), reel(0.3, 3))),
  'a slow lift right under the boat': shownLift(under, 9, 10, 6),
  'a slow lift far out': shownLift(far, 9, 10, 6),
  'a lift of an hour in a second': shownLift(water, 10, 11, 1),
  'a lift of two hours in a second': shownLift(water, 10, 12, 1),
  'a light jig lifted': lifted(3 / 8),
  'a heavy jig lifted': lifted(1),
  'three hops, nothing reeled': shownHops(far, 10, 11, 0.5, 3, 1.5),
  'three hops, reeled': shownHops(far, 10, 11, 0.5, 3, 1.5, 0.6),
  'a slow drag on braid': shownDrag(braid, ft(2), 4),
  'a slow drag on mono': shownDrag(far, ft(2), 4),
  'a slow drag with a soft rod': shownDrag(softTip, ft(2), 4),
  'a light fall': tied(1 / 4, SMALL_TRAILER_M2),
  'a heavy fall': tied(1, SMALL_TRAILER_M2),
  'a quarter ounce, small trailer': tied(1 / 4, SMALL_TRAILER_M2, ft(60)),
  'three eighths, big trailer': tied(3 / 8, BIG_TRAILER_M2, ft(60)),
  'half an ounce, big trailer': tied(1 / 2, BIG_TRAILER_M2, ft(60))
});

let named: ReadonlyMap<string, ShownRun> | undefined;

/** Every run that a question's claim may name: what questions show, proofs, and the lessons' own. */
export function namedRuns(): ReadonlyMap<string, ShownRun> {
  return (named ??= new Map([
    ...Object.entries<ShownRun>(SHOWN),
    ...Object.entries(proofs()),
    ...allLessons().flatMap((lesson) =>
      [...runsOf(lesson)].map(([id, run]) => [`${lesson.id}:${id}`, run] as const)
    )
  ]));
}
