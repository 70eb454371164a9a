import { expect, test } from 'vitest';
import { anyScenario } from './any-scenario';
import { faultsOf, faultsOfRefusal } from './scenario-faults';
import { wrongScenario } from './wrong-scenario';

/** npm run check:scenarios takes three hundred. */
const FEW = [0, 2, 4, 6, 7];

test('scenarios as they come hold: finite, above the bottom, the same again and mirrored, no energy made', () => {
  const found = FEW.map((n) => faultsOf(anyScenario(n)));
  expect(found.flatMap(({ faults }) => faults)).toEqual([]);
  expect(found.filter(({ refused }) => refused !== undefined)).toEqual([]);
  // Twenty runs and five bookings: seconds, and on a busy machine more of them.
});

test('a hundred faulty scenarios are refused by field and value', () => {
  const faults = Array.from({ length: 100 }, (_, n) => faultsOfRefusal(wrongScenario(n)));
  expect(faults.flat()).toEqual([]);
});
