import { readdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { FIGURES_SHOWN, saysWhyNoBand } from '../../src/lib/shell/figures-shown';

const pages = readdirSync('src/routes', { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('+page.svelte'))
  .map((path) => (dirname(path) === '.' ? '/' : `/${dirname(path)}`))
  .sort();

test('of every page it is told whether its figures carry a band', () => {
  expect(Object.keys(FIGURES_SHOWN).sort()).toEqual(pages);
});

test('a page says why there is no band where its figures are of single runs, and nowhere else', () => {
  expect(pages.filter(saysWhyNoBand)).toEqual(
    pages.filter((page) => FIGURES_SHOWN[page] === 'of a run')
  );
  expect(saysWhyNoBand('/water')).toBe(true);
  expect(saysWhyNoBand('/card')).toBe(false);
  expect(saysWhyNoBand(null)).toBe(false);
});
