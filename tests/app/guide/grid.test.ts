import { describe, expect, test } from 'vitest';
import { sampleTask } from '../../server/samples';
import { cellText, gridOf, needsWord, type GridHomework } from '../../../src/lib/app/guide/grid';
import type { PartCount } from '../../../src/lib/wire';

const named = { lesson: (id: string) => id.toUpperCase(), objective: (id: string) => `of ${id}` };
const standing = (id: string, nickname: string, ...counts: PartCount[]) => {
  const joined_at = '2031-05-01T08:00:00.000Z';
  return { id, nickname, joined_at, done: 0, parts: 2, hasBegun: true, counts, word: null };
};
const part = (made: number, good: number | null, of: number): PartCount => ({ made, good, of });
const task = {
  title: 'Second',
  lessons: ['slack'],
  challenges: [{ id: 'two-feet', title: 'Two feet' }],
  objectives: []
};
const second: GridHomework = {
  id: 'b',
  task,
  standings: [standing('b1', 'ina ', part(1, null, 1), part(3, 2, 8))]
};
const first: GridHomework = {
  id: 'a',
  task: { ...task, title: 'First', lessons: [], lawn: { meant_m: 0.3 } },
  standings: [
    standing('a1', 'Wim', part(8, 8, 8), part(0, null, 1)),
    standing('a2', 'Ina', part(5, 1, 8), part(1, null, 1)),
    standing('a3', 'Wim', part(0, 0, 8), part(0, null, 1))
  ]
};

describe('the grid of clients', () => {
  const { columns, blocks } = gridOf([second, first], named);

  test('has a column a name, two for two of one name in a homework', () => {
    expect(columns.map(({ nickname }) => nickname)).toEqual(['ina ', 'Wim', 'Wim']);
  });

  test('has a row a part, and says who has not opened a homework', () => {
    expect(blocks.map(({ title }) => title)).toEqual(['Second', 'First']);
    expect(blocks[0].rows).toEqual([
      { title: 'Lesson: SLACK', good: 'passed', cells: [part(1, null, 1), null, null] },
      { title: 'Two feet', good: 'passed', cells: [part(3, 2, 8), null, null] }
    ]);
    expect(blocks[1].rows.at(-1)).toMatchObject({ title: 'Ten on the lawn' });
    expect(blocks[1].rows[0].cells).toEqual([part(5, 1, 8), part(8, 8, 8), part(0, 0, 8)]);
    expect(blocks[1].clients).toEqual(['a2', 'a1', 'a3']);
  });
});

test('names a part of each kind', () => {
  const asked = { ...sampleTask, objectives: ['slack', 'mood'], lawn: { meant_m: 0.3 } };
  const { blocks } = gridOf([{ id: 'c', task: asked, standings: [] }], named);
  expect(blocks[0].rows.map(({ good }) => good).slice(-3)).toEqual(['right', 'right', 'passed']);
  expect(blocks[0].rows.map(({ title }) => title)).toEqual([
    ...asked.lessons.map((id) => `Lesson: ${id.toUpperCase()}`),
    ...asked.challenges.map(({ title }) => title),
    'Questions: of slack',
    'Questions: of mood',
    'Ten on the lawn'
  ]);
});

test.each([
  [part(6, 4, 8), 'passed', '6 of 8, 4 passed'],
  [part(3, 2, 3), 'right', '3 of 3, 2 right'],
  [part(0, 0, 8), 'passed', 'to do'],
  [part(1, null, 1), 'passed', 'done'],
  [part(0, null, 1), 'passed', 'to do']
] as const)('%o, of which some %s, reads “%s”', (cell, good, text) =>
  expect(cellText(cell, good)).toBe(text)
);

test.each([
  ['most of what came missed', part(6, 2, 8), true],
  ['most of what came was good', part(6, 5, 8), false],
  ['the last try, with the jig hidden, hit it', { ...part(2, 1, 2), endsWell: true }, false],
  ['the last try missed', { ...part(2, 1, 2), endsWell: false }, true],
  ['nothing came yet', part(0, 0, 8), false],
  ['there is nothing to pass', part(1, null, 1), false]
] as const)('a client of whom %s needs a word: %o', (_, cell, needs) =>
  expect(needsWord(cell)).toBe(needs)
);
