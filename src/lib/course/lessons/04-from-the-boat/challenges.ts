import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../retrieves/moves';
import { castOut, JIGS, waterWith } from '../fathomley';

export default [
  {
    id: 'count-it-down',
    title: 'Count it down',
    ask: '{5/8 oz|18 g}, free spool. The dots on the line run out. They stop: it’s down. Then lower the rod.',
    setup: waterWith({ start: castOut(ft(45)) }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 30,
    goals: [{ kind: 'bottom_first', within_s: 2.5, weight: 100 }],
    visibility: 'seen',
    reference: inTurn(held(45), pause(5.6), lift(45, 20, 1)),
    // Not waiting for the bottom: the dearest habit after a wrong place.
    beginner: inTurn(held(45), pause(2.5), lift(45, 70, 0.6))
  },
  {
    id: 'count-a-lighter-one',
    title: 'Count a lighter one',
    ask: 'Same cast, {3/8 oz|11 g}. Count, and lower the rod when you think it’s down.',
    setup: waterWith({ mass_kg: JIGS.threeEighths, start: castOut(ft(45)) }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 30,
    goals: [{ kind: 'bottom_first', within_s: 2.5, weight: 100 }],
    visibility: 'unseen',
    reference: inTurn(held(45), pause(6.9), lift(45, 20, 1)),
    // The count of the heavier jig, used for the lighter one.
    beginner: inTurn(held(45), pause(4.7), lift(45, 20, 1))
  }
] satisfies Challenge[];
