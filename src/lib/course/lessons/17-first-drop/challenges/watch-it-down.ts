import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { castOut, JIGS, deeperWith } from '../../fathomley';

export default {
  id: 'watch-it-down',
  title: 'Watch it down',
  ask: 'Free spool, {22 ft|6.7 m}, {1/2 oz|14 g}. Watch the line. Lower the rod once it’s slack.',
  setup: deeperWith({ mass_kg: JIGS.half, start: castOut(14) }),
  plane: 'lift',
  start: upright(45),
  hold_s: 2,
  longest_pause_s: 40,
  goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
  visibility: 'half_seen',
  reference: inTurn(held(45), pause(13.4), lift(45, 20, 1)),
  // Engaged and lifted on the drop.
  beginner: inTurn(held(45), pause(4), lift(45, 75, 0.6))
} satisfies Challenge;
