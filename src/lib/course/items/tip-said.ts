import { formatLength, type Units } from '../../scoring';
import { figuresOf } from './figures';
import type { Item } from './item';
import { shownScenarioOf } from './measure';

/** Where words say how far a sweep takes the tip. */
const SAID = /(?:tip goes|tip|sweep of) \{length:([\d.]+)\}/i;
const UNITS: readonly Units[] = ['imperial', 'metric'];

/**
 * What a question says of the tip against what its runs did, as it is read in either units: they are
 * one number, and the jig of such a sweep does not come further.
 */
export function tipFaults({ ask, cases }: Item): string[] {
  const asked = SAID.exec(ask)?.[1];
  return cases.flatMap(({ caption, run }) => {
    const said = SAID.exec(caption)?.[1] ?? asked;
    if (said === undefined) return [];
    const { tip_m, travel_m } = figuresOf(shownScenarioOf(run));
    return UNITS.flatMap((units) => {
      const [told, tip, jig] = [Number(said), tip_m, travel_m].map((m) => formatLength(m, units));
      return [
        ...(told === tip ? [] : [`the tip is said to go ${told} and goes ${tip}`]),
        ...(travel_m <= tip_m || jig === tip ? [] : [`the tip goes ${tip}, the jig ${jig}`])
      ];
    });
  });
}
