import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { waterWith, castOut, JIGS } from '../../fathomley';

export default {
  id: 'count-a-lighter-one',
  title: 'Count a lighter one',
  ask: 'Same cast, {3/8 oz|11 g}, unseen. Lower the rod once it’s down.',
  setup: waterWith({ mass_kg: JIGS.threeEighths, start: castOut(14) }),
  plane: 'lift',
  start: upright(45),
  hold_s: 2,
  longest_pause_s: 30,
  goals: [{ kind: 'bottom_first', within_s: 2.5, weight: 100 }],
  visibility: 'unseen',
  reference: inTurn(held(45), pause(8.1), lift(45, 20, 1)),
  // The count of the heavier jig, used for the lighter one.
  beginner: inTurn(held(45), pause(5.5), lift(45, 20, 1))
} satisfies Challenge;
