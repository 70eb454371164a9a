import type { SetupInput } from '../../model';
import { ft } from '../items/draw';
import { shownDrag, shownHops } from '../items/moves';
import type { ShownRun } from '../lesson';
import { uprightRun } from '../lessons/runs';
import { hopLowered, threeHops } from '../retrieves/moves';

/** The plainest move of a retrieve, which the model is asked about, and its words. */
export interface PlainMove {
  /** Of RETRIEVES. */
  retrieve: string;
  says: string;
  /** Guides see less travel of it than the model does. */
  isLift?: true;
  /** Way of the tip, m, and time with what lowers it again, s. */
  tip_m: number;
  takes_s: number;
  run: (setup: SetupInput) => ShownRun;
}

/** The lesson's hop and no other, as plan and card have it. */
export const shownHop = (setup: SetupInput): ShownRun => uprightRun(setup, 30, hopLowered);
export const HOP_SAYS = 'Hop: {15 in|40 cm} of tip, from ten, in ¼ s';

/** Moves inside the trade's ranges (docs/trade-check.md). Retrieves that hardly move the jig have none. */
export const PLAIN_MOVES: readonly PlainMove[] = [
  {
    retrieve: 'drag',
    says: 'Tip {2 ft|60 cm} in 4 s',
    tip_m: ft(2),
    takes_s: 4,
    run: (setup) => shownDrag(setup, ft(2), 4)
  },
  {
    retrieve: 'lift and follow down',
    says: 'Rod 9 to 10, 1½ s up, then down with it',
    isLift: true,
    tip_m: ft(3),
    takes_s: 4.5,
    run: (setup) => shownHops(setup, 9, 10, 1.5, 1, 1)
  },
  {
    retrieve: 'hop',
    says: HOP_SAYS,
    isLift: true,
    tip_m: ft(1.25),
    takes_s: 1,
    run: shownHop
  },
  {
    retrieve: 'three hops',
    says: 'Three hops of {15 in|40 cm} of tip, rod climbing, 3 s rests',
    isLift: true,
    tip_m: ft(3.75),
    takes_s: 7,
    run: (setup) => uprightRun(setup, 30, threeHops)
  },
  {
    retrieve: 'stroke',
    says: 'Rod 9:30 to 11:30, ½ s up, then down with it',
    isLift: true,
    tip_m: ft(6),
    takes_s: 1.5,
    run: (setup) => shownHops(setup, 9.5, 11.5, 0.5, 1, 1)
  }
];
