import { expect, test } from 'vitest';
import { dropFavorite, favoritesOn, keepFavorite } from '../../../src/lib/app/homework/favorites';
import { sampleTask } from '../../server/samples';

function shelf() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key)
  };
}

test('a favorite is kept without its last day, newest first, and one of the same title makes way', () => {
  const own = shelf();
  expect(favoritesOn(own)).toEqual([]);
  keepFavorite(own, 'a', { ...sampleTask, title: 'Spring', due: '2031-05-09' });
  keepFavorite(own, 'b', { ...sampleTask, title: 'Fall' });
  keepFavorite(own, 'c', { ...sampleTask, title: 'Spring', note: 'Slower.' });
  expect(favoritesOn(own).map(({ id, task }) => [id, task.title, task.note, task.due])).toEqual([
    ['c', 'Spring', 'Slower.', null],
    ['b', 'Fall', sampleTask.note, null]
  ]);
  dropFavorite(own, 'c');
  expect(favoritesOn(own).map(({ id }) => id)).toEqual(['b']);
});

test('a favorite that can no longer be read is left out, and the others stay', () => {
  const own = shelf();
  keepFavorite(own, 'a', { ...sampleTask, title: 'Spring' });
  const [[key, text]] = own.kept;
  own.setItem(key, JSON.stringify([{ id: 'x', task: { title: 7 } }, ...JSON.parse(text)]));
  expect(favoritesOn(own).map(({ id }) => id)).toEqual(['a']);
  own.setItem(key, 'not json');
  expect(favoritesOn(own)).toEqual([]);
});
