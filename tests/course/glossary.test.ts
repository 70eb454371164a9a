import { expect, test } from 'vitest';
import { glossary, loadLessons } from '../../src/lib/course';
import { claimsOf } from '../../src/lib/course/claims';

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

test('what the model can decide of a word’s meaning names what its lesson shows by a run', () => {
  const shown = terms.flatMap(({ lesson, basis }) =>
    basis === 'practice' ? [] : [{ lesson, ...basis }]
  );
  const lost = shown.filter(({ lesson: id, claim }) => {
    const lesson = loadLessons().find((one) => one.id === id);
    const runs = lesson ? claimsOf(lesson).filter(({ basis }) => basis !== 'practice') : [];
    return !runs.some(({ says }) => says === claim);
  });
  expect(shown.length).toBeGreaterThan(5);
  expect(lost).toEqual([]);
});
