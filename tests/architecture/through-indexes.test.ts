import { expect, test } from 'vitest';
import { madeIn } from '../../scripts/through-indexes.mjs';

const lib = new URL('../../src/lib/', import.meta.url).pathname;

test.each([
  ['a name that is handed on', 'wire/index.ts', 'csvTable', 'wire/csv.ts', 'csvTable'],
  [
    'one of an index that is handed on whole',
    'practice/index.ts',
    'dayNumberOf',
    'practice/review/days.ts',
    'dayNumberOf'
  ],
  ['one of a file that is handed on whole', 'model/index.ts', 'FOOT_M', 'model/units.ts', 'FOOT_M'],
  ['a part of a page', 'shell/index.ts', 'Bed', 'shell/Bed.svelte', 'default']
])('%s is imported from the file that makes it', (_, index, name, file, made) => {
  expect(madeIn(lib + index, name)).toEqual({ file: lib + file, name: made });
});

test('a name that nobody hands on stays where it is asked for', () => {
  expect(madeIn(`${lib}wire/index.ts`, 'nothingOfTheKind')).toBeNull();
});
