import { describe, expect, test } from 'vitest';
import { GROUND_KINDS } from '../../src/lib/model';
import { isCertain, loadLessons, type Lesson } from '../../src/lib/course';

const lessons = loadLessons();
const told = lessons.map((lesson): [string, Lesson] => [lesson.id, lesson]);
const practised = told.filter(([id]) => id !== 'safety');

function wordsOf(thing: unknown): string {
  return JSON.stringify(thing);
}

describe('the course', () => {
  test('begins with safety and goes on with sixteen lessons', () => {
    expect(lessons[0].id).toBe('safety');
    expect(lessons).toHaveLength(17);
  });

  test('names every kind of bottom where bottoms are read', () => {
    const [feel] = lessons
      .filter(({ id }) => id === 'reading-bottoms')
      .flatMap(({ sections }) => sections.filter(({ kind }) => kind === 'feel'));
    const named = wordsOf(feel).toLowerCase();
    expect(GROUND_KINDS.filter((kind) => !named.includes(kind))).toEqual([]);
  });
});

describe.each(told)('%s', (_, lesson) => {
  test('leads back to safety, through lessons before it', () => {
    const before = new Set<string>();
    const gather = ({ builds_on }: Lesson) => {
      for (const id of builds_on) {
        before.add(id);
        gather(lessons.find((other) => other.id === id) as Lesson);
      }
    };
    gather(lesson);
    expect(lesson.id === 'safety' || before.has('safety')).toBe(true);
  });

  test('says that its lake is invented, and that local rules come first', () => {
    expect(lesson.place.note).toMatch(/invented/i);
    expect(lesson.cautions.join(' ')).toMatch(/local rules.* come before/i);
  });

  test('ends with a field drill and what to write down', () => {
    expect(lesson.sections.at(-1)?.kind).toBe('field');
  });

  test('writes lengths so that they follow the learner’s units', () => {
    expect(wordsOf(lesson)).not.toMatch(/\d ?(m|cm|ft|feet|inches|oz|°)\b/);
  });
});

describe.each(practised)('%s', (_, lesson) => {
  test('takes 8 to 15 minutes', () => {
    expect(lesson.minutes).toBeGreaterThanOrEqual(8);
    expect(lesson.minutes).toBeLessThanOrEqual(15);
  });

  test('asks, shows, lets try, tells what is felt, and sends to the water', () => {
    const kinds = lesson.sections.map(({ kind }) => kind);
    expect(kinds).toEqual(['predict', 'see', 'try', 'feel', 'field']);
  });

  test('asks nothing that slack or drag area could change', () => {
    for (const section of lesson.sections) {
      if (section.kind === 'predict') expect(isCertain(section.question)).toBe(true);
    }
  });
});
