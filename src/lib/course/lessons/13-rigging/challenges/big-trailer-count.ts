import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { castOut, JIGS, waterWith } from '../../fathomley';

export default {
  id: 'big-trailer-count',
  title: 'Count a big trailer',
  ask: 'Free spool, {20 ft|6 m}, {1/2 oz|14 g} with a big trailer, unseen. Lower the rod once it’s down.',
  setup: waterWith({
    depth_m: 6.1,
    mass_kg: JIGS.half,
    drag_area_m2: 13e-4,
    start: castOut(14)
  }),
  plane: 'lift',
  start: upright(45),
  hold_s: 2,
  longest_pause_s: 40,
  goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
  visibility: 'unseen',
  reference: inTurn(held(45), pause(16), lift(45, 20, 1)),
  // The count of a bare jig.
  beginner: inTurn(held(45), pause(8), lift(45, 20, 1))
} satisfies Challenge;
