import { seededRandom } from '../../../model';
import { shuffled } from '../draw';
import type { Generator } from '../generator';
import { fallCounts } from './fall-counts';
import { falls } from './falls';
import { faults } from './faults';
import { felt } from './felt';
import { hours } from './hours';
import { markGenerators } from './marks';
import { distances } from './near-or-far';
import { orders } from './orders';
import { paces } from './paces';
import { plans } from './plans';
import { reelings } from './reeled-hops';
import { rows } from './rows';
import { season } from './season';
import { showings } from './showings';
import { ways } from './ways';

const written: readonly Generator[] = [
  ...markGenerators,
  ...fallCounts,
  ...falls,
  ...orders,
  ...hours,
  ...rows,
  ...plans,
  ...felt,
  ...faults,
  ...paces,
  ...distances,
  ...season,
  ...showings,
  ...ways,
  ...reelings
];

/** Three options a question: whoever takes one place all through a sheet is right a third of the time. */
const PLACES = 3;
/** Any number will do; another deals the places of all questions anew. */
const DEALT_BY = 6;

/** Where each generator begins: every place as often, in an order that nobody foresees. */
const begins = shuffled(
  seededRandom(DEALT_BY),
  written.map((_, i) => i % PLACES)
);

export const GENERATORS: readonly Generator[] = written.map((one, i) => ({
  ...one,
  begins: begins[i]
}));
