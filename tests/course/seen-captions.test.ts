import { expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { parseSetup, simulate } from '../../src/lib/model';

const shown = loadLessons().flatMap(({ sections }) =>
  sections.flatMap((section) => (section.kind === 'see' ? section.demos : []))
);
const isDownAllTheWay = ({ run: { setup, move, hold_s } }: (typeof shown)[number]) =>
  simulate({ ...parseSetup(setup), move, hold_s }).contact_fraction === 1;

test('what is down all the way is not said to be down for longer', () => {
  const longer = shown.filter(({ caption }) => /bottom (for )?longer/.test(caption));
  expect(shown.length).toBeGreaterThan(10);
  expect(longer.filter(isDownAllTheWay).map(({ caption }) => caption)).toEqual([]);
});
