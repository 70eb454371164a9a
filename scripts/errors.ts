/**
 * npm run errors: writes the model's errors and bands into docs/model-errors.md; some minutes of computing.
 * `-- 4` only prints what so few waits and casts give.
 */
import { writeFileSync } from 'node:fs';
import { ERRORS_FILE, errorsDocument, PEERS, WAITS } from '../tests/published/error-tables';

const few = process.argv[2];
if (few === undefined) {
  writeFileSync(ERRORS_FILE, errorsDocument(WAITS, PEERS));
  console.log(`${ERRORS_FILE} written`);
} else {
  console.log(errorsDocument(Number(few), Number(few)));
}
