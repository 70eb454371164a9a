import { expect, test } from 'vitest';
import { questionsOn } from '../../../src/lib/app/quiz/sheet';
import type { MakeItem } from '../../../src/lib/app/quiz/quiz-run.svelte';
import { FIXED, GENERATORS, type Item } from '../../../src/lib/course/items';

const SHEETS = Array.from({ length: 24 }, (_, i) => i + 1);
/** As many in a row tell a room what comes next. */
const RUN = 3;

const OPTIONS = ['key', 'one', 'other'].map((id) => ({ id, says: id, reply: '' }));
const WORDS = { right: '', reversed: '', other: '', rule: '' };

/** Written ones as they are, generated ones with the key first; no run is made. */
const make: MakeItem = ({ item, seed }) => {
  const fixed = FIXED.find(({ source }) => source === item);
  const kind = GENERATORS.find(({ id }) => id === item)?.kind;
  const made = {
    ...{ source: item, seed, ask: '', explain: '', objective: '', cases: [] },
    evidence: { is: 'practice', source: '' },
    kind: kind ?? 'choose',
    answer:
      kind === 'order' || kind === 'mark'
        ? { form: 'order', things: OPTIONS, key: OPTIONS.map(({ id }) => id), ...WORDS }
        : { form: 'choose', options: OPTIONS, key: 'key' }
  } satisfies Item;
  return Promise.resolve(fixed ?? made);
};

test.each(SHEETS)(
  'sheet %i has its keys at A, B and C about as often, never three in a row',
  async (sheet) => {
    const places: number[] = [];
    for await (const { item } of questionsOn(sheet, make, new AbortController().signal)) {
      const { answer } = item;
      if (answer.form !== 'choose') continue;
      expect(new Set(answer.options.map(({ id }) => id)).size).toBe(OPTIONS.length);
      places.push(answer.options.findIndex(({ id }) => id === answer.key));
    }
    const counts = [0, 1, 2].map((at) => places.filter((one) => one === at).length);
    expect(Math.max(...counts) - Math.min(...counts), `${places}`).toBeLessThanOrEqual(1);
    const runs = places.filter(
      (at, i) =>
        places.slice(i, i + RUN).length === RUN &&
        places.slice(i, i + RUN).every((one) => one === at)
    );
    expect(runs, `${places}`).toEqual([]);
  }
);

test('two sheets have their keys in other places', async () => {
  const rows = await Promise.all(
    [1, 2, 3].map(async (sheet) => {
      const keys: number[] = [];
      for await (const { item } of questionsOn(sheet, make, new AbortController().signal))
        if (item.answer.form === 'choose') {
          const { options, key } = item.answer;
          keys.push(options.findIndex(({ id }) => id === key));
        }
      return keys.join();
    })
  );
  expect(new Set(rows).size).toBe(rows.length);
});
