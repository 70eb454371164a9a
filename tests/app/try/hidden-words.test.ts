import { expect, test } from 'vitest';
import { hiddenWords, taskWords } from '../../../src/lib/app/try/hidden-words';
import { loadLessons } from '../../../src/lib/course';

const tasks = loadLessons().flatMap(({ challenges }) => challenges);

test('a task with a hidden jig says so before the rod is taken, once', () => {
  const hidden = tasks.filter(({ visibility }) => visibility !== 'seen');
  expect(hidden.length).toBeGreaterThan(20);
  for (const task of hidden) {
    const said = `${task.title} ${task.ask} ${hiddenWords(task)}`;
    expect(said.match(/unseen|before you look|hidden/gi) ?? [], task.id).not.toEqual([]);
    expect(/unseen/.test(task.ask) && hiddenWords(task) !== '', task.id).toBe(false);
  }
});

test('who only looks is not told to call it', () => {
  const halfSeen = tasks.filter(({ visibility }) => visibility === 'half_seen');
  expect(halfSeen.some(({ ask }) => /call/i.test(ask))).toBe(true);
  for (const { id, ask } of halfSeen) {
    expect(taskWords(ask, true), id).not.toMatch(/call|unseen|hidden/i);
    expect(taskWords(ask, false), id).toBe(ask);
  }
});

test('a task with the jig in sight says nothing of it', () => {
  const seen = tasks.filter(({ visibility }) => visibility === 'seen');
  expect(new Set(seen.map(hiddenWords))).toEqual(new Set(['']));
});
