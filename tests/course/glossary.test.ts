import { expect, test } from 'vitest';
import { glossary, loadLessons } from '../../src/lib/course';

const terms = glossary();

test('the glossary is in the order of the alphabet, and has no word twice', () => {
  const words = terms.map(({ term }) => term);
  expect(words).toEqual([...new Set(words)].sort());
});

test('each word leads to a lesson, and that lesson uses it', () => {
  const lessons = loadLessons();
  const lost = terms.filter(({ term, lesson }) => {
    const words = JSON.stringify(lessons.find(({ id }) => id === lesson) ?? {}).toLowerCase();
    return !words.includes(term);
  });
  expect(lost.map(({ term }) => term)).toEqual([]);
});
