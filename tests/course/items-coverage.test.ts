import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { askedBy, COVERAGE, lessonOf, SOURCES } from '../../src/lib/course/items';

const lessons = loadLessons().map(({ id, objectives }) => ({ id, objectives }));

describe('questions about lessons', () => {
  test.each(lessons)('$id: each of its objectives is asked about', ({ id, objectives }) => {
    expect(Object.keys(COVERAGE[id])).toEqual(objectives);
    for (const [words, items] of Object.entries(COVERAGE[id])) {
      expect(items.length, words).toBeGreaterThanOrEqual(1);
    }
  });

  test.each(lessons)('$id: at least two questions are its own', ({ id }) => {
    expect(SOURCES.filter(({ objective }) => lessonOf(objective) === id).length).toBeGreaterThan(1);
  });

  test('name questions that there are, and no lesson that there is not', () => {
    const named = Object.values(COVERAGE).flatMap((objectives) => Object.values(objectives).flat());
    const there = new Set(SOURCES.map(({ item }) => item));
    expect(named.filter((item) => !there.has(item))).toEqual([]);
    expect(Object.keys(COVERAGE)).toEqual(lessons.map(({ id }) => id));
  });

  test('are found by their name', () => {
    expect(askedBy('season-pause')).toEqual(['Do nothing for as long as it takes.']);
  });
});
