/**
 * npm run trade-check [-- row …]: writes docs/trade-check.md anew from the model as it is, which takes a
 * minute or two, or those rows of its first table alone, by what they are called there; and what
 * docs/planing.md and docs/model.md say of it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { tradeDocument, withRows } from '../tests/published/trade-table';
import {
  modelItems,
  planingSections,
  tradeFigures,
  withItems,
  withSections
} from '../tests/published/trade-words';

const FILE = 'docs/trade-check.md';

const [, , ...rows] = process.argv;
const document = rows.length > 0 ? withRows(readFileSync(FILE, 'utf8'), rows) : tradeDocument();
const figures = tradeFigures(document);

rewrite(FILE, () => document);
rewrite('docs/planing.md', (text) => withSections(text, planingSections(figures)));
rewrite('docs/model.md', (text) => withItems(text, modelItems(figures)));

function rewrite(file: string, change: (text: string) => string): void {
  writeFileSync(file, change(readFileSync(file, 'utf8')));
  console.log(`${file} written`);
}
