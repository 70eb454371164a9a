/**
 * npm run check:scenarios [-- 300]: seeded scenarios over all that one can say, each run, run again, run
 * mirrored and its energy booked; and 100 with one fault, which have to be refused by field and value. Exit 1
 * where one fails.
 */
import { anyScenario } from '../tests/model/any-scenario';
import { faultsOf, faultsOfRefusal } from '../tests/model/scenario-faults';
import { wrongScenario } from '../tests/model/wrong-scenario';

const count = Number(process.argv[2] ?? 300);
const WRONG = 100;
let refused = 0;
let failed = 0;

for (let n = 0; n < count; n++) {
  const found = faultsOf(anyScenario(n));
  if (found.refused !== undefined) {
    refused++;
    console.log(`${n}: refused, ${found.refused}`);
  }
  if (found.faults.length > 0) {
    failed++;
    console.log(`${n}: ${found.faults.join('; ')}\n  ${JSON.stringify(anyScenario(n))}`);
  }
}
let unnamed = 0;
for (let n = 0; n < WRONG; n++) {
  const faults = faultsOfRefusal(wrongScenario(n));
  if (faults.length > 0) unnamed++;
  for (const fault of faults) console.log(`wrong ${n}: ${fault}`);
}
console.log(`${count - failed} of ${count} scenarios hold; ${refused} of them found no start`);
console.log(`${WRONG - unnamed} of ${WRONG} faulty ones are refused by field and value`);
process.exitCode = failed + unnamed > 0 ? 1 : 0;
