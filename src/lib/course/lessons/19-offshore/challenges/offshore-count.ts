import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { castOut, JIGS, waterWith } from '../../fathomley';

export default {
  id: 'offshore-count',
  title: 'Count it deep',
  ask: 'Free spool, {35 ft|10.5 m}, {1 oz|28 g}, unseen. Lower the rod once it’s down.',
  setup: waterWith({ depth_m: 10.7, mass_kg: JIGS.ounce, start: castOut(14) }),
  plane: 'lift',
  start: upright(45),
  hold_s: 2,
  longest_pause_s: 60,
  goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
  visibility: 'unseen',
  reference: inTurn(held(45), pause(15.2), lift(45, 20, 1)),
  // The count of shallow water.
  beginner: inTurn(held(45), pause(6), lift(45, 20, 1))
} satisfies Challenge;
