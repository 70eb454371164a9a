import type { Challenge } from '../../../../scoring';
import { inTurn, pause, sweep } from '../../../retrieves/moves';
import sideways from '../../10-hops/challenges/three-hops-sideways';

export default {
  ...sideways,
  id: 'three-hops-sideways-uneven',
  title: 'Three hops, sideways and uneven',
  ask: 'Three low hops to the side again. Make one rest at least twice the other.',
  longest_pause_s: 10,
  goals: [
    { kind: 'hops', count: 3, height_m: [0.03, 0.2], weight: 38 },
    { kind: 'rests', count: 2, least_s: 1.2, weight: 31 },
    { kind: 'rhythm', even: false, weight: 31 }
  ],
  reference: inTurn(
    sweep(50, 62, 0.28),
    pause(3),
    sweep(62, 74, 0.28),
    pause(8),
    sweep(74, 86, 0.28)
  )
} satisfies Challenge;
