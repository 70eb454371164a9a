import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { errorText, publishedChecks } from '../../../src/lib/app/trust/checks';
import { inFeet } from '../../../src/lib/app/trust/in-feet';
import { blocksOf, sectionOf, spansOf } from '../../../src/lib/app/trust/markdown';

const doc = (name: string) =>
  readFileSync(new URL(`../../../docs/${name}.md`, import.meta.url), 'utf8');

test('a document of ours is read as what it is, and its markup is no markup of a page', () => {
  const text =
    '# A *b*\n\nWords and\n`<b>code</b>`.\n\n- one\n  more\n- **two**\n\n| a | b |\n| - | - |\n| 1 | 2 |';
  const plain = (text: string) => ({ kind: 'plain', text });
  expect(blocksOf(text)).toEqual([
    { kind: 'heading', level: 1, text: [plain('A '), { kind: 'em', text: 'b' }] },
    {
      kind: 'paragraph',
      text: [plain('Words and '), { kind: 'code', text: '<b>code</b>' }, plain('.')]
    },
    { kind: 'list', items: [[plain('one more')], [{ kind: 'strong', text: 'two' }]] },
    { kind: 'table', head: [[plain('a')], [plain('b')]], rows: [[[plain('1')], [plain('2')]]] }
  ]);
  expect(spansOf('see [a *page*](x.md).').map(({ text }) => text)).toEqual([
    'see ',
    'a ',
    'page',
    '.'
  ]);
});

test('the known faults and the trade’s table are found where the page looks for them', () => {
  const faults = sectionOf(blocksOf(doc('model')), 'What’s wrong with it');
  expect(faults.map(({ kind }) => kind)).toContain('list');
  expect(blocksOf(doc('trade-check')).filter(({ kind }) => kind === 'table')[0]).toMatchObject({
    head: expect.arrayContaining([[{ kind: 'plain', text: 'trade' }]])
  });
  expect(sectionOf(faults, 'No such heading')).toEqual([]);
});

test('where feet are chosen a document is read in feet, inches and ounces, and a speed is left alone', () => {
  const of = (text: string) => inFeet(blocksOf(text));
  expect(of('A 21 g jig, 4 m deep, 24 m out.')).toEqual(
    blocksOf('A 3/4\u00a0oz jig, 13 ft deep, 79 ft out.')
  );
  expect(of('- 9 cm of slack, 1.9 m of reach, 3 m/s, 1.25 ms')).toEqual(
    blocksOf('- 3.5 in of slack, 6.2 ft of reach, 3 m/s, 1.25 ms')
  );
  expect(of('| Move | Travel, cm |\n| - | - |\n| lift | 65 ± 18 |')).toEqual(
    blocksOf('| Move | Travel, in |\n| - | - |\n| lift | 26 ± 7.1 |')
  );
  expect(of('| | worst |\n| - | - |\n| Height, mm | 3.30 |')).toEqual(
    blocksOf('| | worst |\n| - | - |\n| Height, in | 0.13 |')
  );
  const left = /\d (mm|cm|m|g|N)\b(?![/²³·])|, (mm|cm|N)$/;
  const texts = ['model-errors', 'trade-check'].flatMap((name) =>
    JSON.stringify(of(doc(name)), ['kind', 'text', 'items', 'head', 'rows']).match(
      /"text":"[^"]*"/g
    )
  );
  expect(texts.length).toBeGreaterThan(50);
  expect(texts.filter((text) => text && left.test(text.slice(8, -1)))).toEqual([]);
});

test('each published value is met, and its error is told', () => {
  // As in tests/published: a digit of the density, half a per cent of a drag read off a curve.
  for (const { what, error } of publishedChecks()) expect(Math.abs(error), what).toBeLessThan(6e-3);
  expect([0.0004, -0.0123].map(errorText)).toEqual(['under 0.1%', '1.2%']);
});
