/** npm run trade-check: writes docs/trade-check.md anew from the model as it is. A minute or two. */
import { writeFileSync } from 'node:fs';
import { tradeDocument } from '../tests/published/trade-table';

const FILE = 'docs/trade-check.md';

writeFileSync(FILE, tradeDocument());
console.log(`${FILE} written`);
