import { describe, expect, test } from 'vitest';
import { generate, GENERATORS, type Item } from '../../src/lib/course/items';
import { blindFaults } from '../../scripts/blind-picks';

const MANY = 60;

/** A question whose options and key are these; nothing else of it counts here. */
function asking(ask: string, says: readonly string[], right: number): Item {
  const options = says.map((one, i) => ({ id: `o${i}`, says: one, reply: '' }));
  return {
    ...{ source: 'a-test', seed: 1, kind: 'choose', objective: 'slack', ask, explain: '' },
    ...{ evidence: { is: 'practice', source: 'a test' }, cases: [] },
    answer: { form: 'choose', options, key: `o${right}` }
  };
}

const always = (item: Item) => Array.from({ length: MANY }, () => item);
const named = (items: readonly Item[]) =>
  blindFaults(items).map((fault) => /all: (.*?) is/.exec(fault)?.[1]);

describe('a row of questions is found out', () => {
  test.each([
    ['the longest', asking('Why?', ['it sinks', 'it goes down much slower', 'it is'], 1)],
    ['the shortest', asking('Why?', ['it sinks', 'it goes down much slower', 'it is'], 2)],
    ['the middle number', asking('How far?', ['1 ft', '6 in', '3 ft'], 0)],
    ['the highest number', asking('How far?', ['1 ft', '6 in', '3 ft'], 2)],
    [
      'the slowest',
      asking('Which?', ['2 ft in 4 seconds', '2 ft in half a second', '3 ft in 1 second'], 0)
    ],
    ['the heaviest', asking('Which?', ['3/8 oz', '1 oz', '1/4 oz'], 1)],
    [
      'a number of the question',
      asking('The tip goes 2 ft. How far?', ['1 ft', '2 ft', '3 ft'], 1)
    ],
    [
      'the most hedged',
      asking('Why?', ['it most often sinks', 'it never sinks at', 'it always sinks at'], 0)
    ]
  ])('where %s is always right', (rule, item) => {
    expect(named(always(item))).toContain(rule);
  });

  test('and not where each is as often right', () => {
    const items = Array.from({ length: MANY }, (_, i) =>
      asking('Which?', ['1/4 oz in 2 seconds', '3/8 oz in 4 seconds', '1 oz in 3 seconds'], i % 3)
    );
    expect(blindFaults(items)).toEqual([]);
  });

  test('where a marked place is a number of the question, or always as far along the ruler', () => {
    const item = asking('The tip goes 2 ft.', [], 0);
    const mark = {
      form: 'mark',
      quantity: 'length',
      key: 0.61,
      band: 0.02,
      least: 0,
      most: 3.05
    } as const;
    const answer = { ...mark, right: '', errors: [], other: '' };
    expect(named(always({ ...item, answer }))).toEqual([
      'the ruler at 0.2',
      'the last number of the question'
    ]);
  });
});

// Those that need no run of the model; `npm run check:items` has all of them.
test.each(
  GENERATORS.filter(({ id }) => /^(season|mood|move)/.test(id)).map((one) => [one.id, one] as const)
)('no rule that knows nothing answers %s over a thousand seeds', (_, generator) => {
  const items = Array.from({ length: 1000 }, (_, i) => generate(generator, i + 1));
  expect(blindFaults(items)).toEqual([]);
});
