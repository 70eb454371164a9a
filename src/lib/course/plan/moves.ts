import type { SetupInput } from '../../model';
import { shownDrag, shownHops, shownLift } from '../items/moves';
import type { ShownRun } from '../lesson';
import { ft } from '../items/draw';

/** The plainest move of a retrieve, which the model is asked about, and its words. */
export interface PlainMove {
  /** Of RETRIEVES. */
  retrieve: string;
  says: string;
  run: (setup: SetupInput) => ShownRun;
}

/** Moves inside the trade's ranges (docs/trade-check.md). Retrieves that hardly move the jig have none. */
export const PLAIN_MOVES: readonly PlainMove[] = [
  {
    retrieve: 'drag',
    says: 'Tip {2 ft|60 cm} in 4 s',
    run: (setup) => shownDrag(setup, ft(2), 4)
  },
  {
    retrieve: 'lift and follow down',
    says: 'Rod 9 to 10:30, 1½ s up, then down with it',
    run: (setup) => shownHops(setup, 9, 10.5, 1.5, 1, 1)
  },
  {
    retrieve: 'hop',
    says: 'Rod 9 to 10, ½ s',
    run: (setup) => shownLift(setup, 9, 10, 0.5)
  },
  {
    retrieve: 'three hops',
    says: 'Rod 9 to 9:30, 0.3 s each, three times',
    run: (setup) => shownHops(setup, 9, 9.5, 0.3, 3, 0.6)
  },
  {
    retrieve: 'stroke',
    says: 'Rod 9:30 to 12, ½ s up, then down with it',
    run: (setup) => shownHops(setup, 9.5, 12, 0.5, 1, 1)
  }
];
