import { expect, test } from 'vitest';
import { feelOffer, hiddenWords } from '../../../src/lib/app/try/hidden-words';
import { challengesOf, drills, loadLessons } from '../../../src/lib/course';
import { asksFeel } from '../../../src/lib/scoring';

const tasks = loadLessons().flatMap(({ challenges }) => challenges);
const drilled = drills.flatMap(({ id }) => challengesOf({ drill: id, phase: 'unseen', seed: 1 }));

test('a task with a hidden jig says so before the rod is taken', () => {
  const hidden = tasks.filter(({ visibility }) => visibility !== 'seen');
  expect(hidden.length).toBeGreaterThan(20);
  for (const task of hidden) expect(hiddenWords(task), task.id).toMatch(/^Jig hidden /);
});

test('a task with the jig in sight says nothing of it', () => {
  const seen = tasks.filter(({ visibility }) => visibility === 'seen');
  expect(new Set(seen.map(hiddenWords))).toEqual(new Set(['']));
});

test('a task is worded alike in sight and hidden: as homework and in a clinic it is both', () => {
  for (const { id, title, ask } of [...tasks, ...drilled])
    expect(`${title} ${ask}`, id).not.toMatch(
      /unseen|hidden|in sight|out of sight|you see|before you look|then look|call it|can’t see/i
    );
});

test('a task that is done by feel offers it before the rod is taken; no other does', () => {
  const offered = tasks.filter((task) => feelOffer(task) !== '');
  expect(offered).toEqual(tasks.filter(asksFeel));
  expect(offered.map(({ id }) => id)).toContain('what-is-this-bottom');
  for (const task of offered) expect(feelOffer(task)).toMatch(/turn Feel on/);
});
