import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bandLine, ERRORS_FILE, MODEL_LINE } from './error-tables';

const lines = readFileSync(ERRORS_FILE, 'utf8').split('\n');

test('the errors that docs and app show are of this version of the model: if not, npm run errors', () => {
  expect(lines).toContain(MODEL_LINE);
});

test('the bands they show are those the model gives: if not, npm run errors', () => {
  // The cheapest of them; made on the same engine, to the last letter.
  expect(lines).toContain(bandLine('lift of an hour'));
});
