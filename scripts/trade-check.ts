/**
 * npm run trade-check [-- row …]: writes docs/trade-check.md anew from the model as it is, which takes a
 * minute or two; or those rows of its first table alone, by what they are called there.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { tradeDocument, withRows } from '../tests/published/trade-table';

const FILE = 'docs/trade-check.md';

const [, , ...rows] = process.argv;
writeFileSync(FILE, rows.length > 0 ? withRows(readFileSync(FILE, 'utf8'), rows) : tradeDocument());
console.log(`${FILE} written`);
