import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { waterWith, castOut, JIGS } from '../../fathomley';

export default {
  id: 'thirty-feet-down',
  title: 'Thirty feet down',
  ask: 'Count {3/4 oz|21 g} down to {30 ft|9 m}, unseen. Lower the rod once it’s there.',
  setup: waterWith({ depth_m: 9.14, mass_kg: JIGS.threeQuarters, start: castOut(16) }),
  plane: 'lift',
  start: upright(45),
  hold_s: 2,
  longest_pause_s: 60,
  goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
  visibility: 'unseen',
  reference: inTurn(held(45), pause(15.9), lift(45, 20, 1)),
  // The count of shallow water.
  beginner: inTurn(held(45), pause(8), lift(45, 20, 1))
} satisfies Challenge;
