import { parseSetup, Run, tipPathOf, type SetupInput } from '../../model';
import { castOut, JIGS, waterWith } from '../lessons/fathomley';
import { held, inTurn, lift, pause, upright } from '../retrieves/moves';
import type { Condition, Drill } from './drill';

/** Three weights, two depths. */
const WEIGHTS_KG = [JIGS.threeEighths, JIGS.half, JIGS.threeQuarters];
const DEPTHS_M = [3.35, 6];
const FRESH = { mass_kg: JIGS.fiveEighths, depth_m: 4.6 };

const HIGH_DEG = 45;
const LOW_DEG = 20;
const CAST_M = 14;
/** The longest fall of them all is over by then, s. */
const LONGEST_FALL_S = 25;
/** The rod may wait so long after the touch, s; the reference waits half of it. */
const WITHIN_S = 4;

function countOf({ mass_kg, depth_m }: { mass_kg: number; depth_m: number }): Condition {
  return () => {
    const setup = waterWith({ depth_m, mass_kg, start: castOut(CAST_M) });
    const fall_s = fallTime(setup);
    const after = (wait_s: number) =>
      inTurn(held(HIGH_DEG), pause(wait_s), lift(HIGH_DEG, LOW_DEG, 1));
    return {
      title: 'A count',
      ask: `Let {weight:${mass_kg}} fall on a free line in {depth:${depth_m}} of water. Lower the rod when it is down.`,
      setup,
      plane: 'lift',
      start: upright(HIGH_DEG),
      hold_s: 1,
      longest_pause_s: LONGEST_FALL_S,
      goals: [{ kind: 'bottom_first', within_s: WITHIN_S, weight: 100 }],
      reference: after(fall_s + WITHIN_S / 2),
      // Half the count: not waiting for bottom.
      beginner: after(fall_s / 2)
    };
  };
}

/** From splash to bottom with the rod held, s. */
function fallTime(input: SetupInput): number {
  const setup = parseSetup(input);
  const run = new Run(setup, tipPathOf(setup, lift(HIGH_DEG, HIGH_DEG, LONGEST_FALL_S)));
  while (!run.isTouching && run.time_s < LONGEST_FALL_S) run.tick();
  return run.time_s;
}

export const count: Drill = {
  id: 'count',
  title: 'Count it down',
  lesson: 'from-the-boat',
  asks: 'down',
  practised: DEPTHS_M.flatMap((depth_m) =>
    WEIGHTS_KG.map((mass_kg) => countOf({ mass_kg, depth_m }))
  ),
  fresh: [countOf(FRESH)]
};
