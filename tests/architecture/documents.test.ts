import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const tests = readdirSync('tests', { recursive: true, encoding: 'utf8' });
const documents = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync('docs')
    .filter((name) => name.endsWith('.md'))
    .map((name) => `docs/${name}`)
];
/** Tests that a document names, by their whole path or by its end. */
const named = documents.flatMap((document) =>
  [...readFileSync(document, 'utf8').matchAll(/`(?:tests\/)?([\w/-]+\.(?:test|spec)\.ts)`/g)].map(
    ([, proof]) => ({ document, proof })
  )
);

test('the threat model and other documents name their proofs', () => {
  expect(named.length).toBeGreaterThan(30);
});

test.each(named)('$document: $proof is there', ({ proof }) => {
  expect(tests.filter((file) => `/${file}`.endsWith(`/${proof}`))).toHaveLength(1);
});
