import { describe, expect, test } from 'vitest';
import { loadLessons, type Lesson } from '../../src/lib/course';
import {
  notRound,
  saidWrongly,
  strangeUnits,
  tooLong,
  wordCount
} from '../../src/lib/course/voice';
import { textsOf } from './texts';

/** Keys whose values are names, numbers or moves, and never read. */
const NOT_READ = new Set(
  'id kind builds_on basis run setup start reference beginner plane visibility phase goals'.split(
    ' '
  )
);

/** Words of a step before there is something to do. */
const MOST_WORDS_A_STEP = 40;
const lessons = loadLessons().map((lesson): [string, Lesson] => [lesson.id, lesson]);

describe.each(lessons)('what %s says', (_, lesson) => {
  const texts = textsOf(lesson, NOT_READ);

  test('is what a guide says, in words and spellings of the water', () => {
    expect(texts.flatMap(saidWrongly)).toEqual([]);
  });

  test('has round numbers in feet and inches and in metric, and no unit of the other', () => {
    expect(texts.flatMap((text) => [...notRound(text), ...strangeUnits(text)])).toEqual([]);
  });

  test('has no sentence over 25 words, and no step over 40 before something is done', () => {
    expect(texts.flatMap(tooLong)).toEqual([]);
    const long = lesson.sections.filter(({ text }) => wordCount(text ?? '') > MOST_WORDS_A_STEP);
    expect(long.map(({ text }) => text)).toEqual([]);
  });
});

describe('the check of words', () => {
  test.each([
    'The jig shall be down.',
    'Bring it 1 ft nevertheless.',
    'That is the way of the tip.',
    'It comes towards you.',
    'Nylon stretches.',
    'Practise it.',
    'Hopped 1 times.',
    'Well done, you.',
    'Look out!',
    'It’s 64 % too short.',
    'Drag the bait a foot.',
    'There is a bow in the line.'
  ])('refuses “%s”', (text) => {
    expect(saidWrongly(text)).toHaveLength(1);
  });

  test('refuses converted numbers, and takes round ones and those written for each units', () => {
    expect(notRound('Drag it {length:0.9}.')).toHaveLength(1);
    expect(notRound('Drag it {length:0.6096}.')).toHaveLength(1);
    expect(notRound('A rod of {length:2}.')).toHaveLength(1);
    // In inches and in millimeters.
    expect(notRound('Line of {diameter:0.0003}.')).toHaveLength(2);
    expect(notRound('Drag it {3 ft|90 cm} or {length:0.3048}.')).toEqual([]);
  });

  test('refuses a unit of the other system', () => {
    expect(strangeUnits('Half of 1 m.')).toHaveLength(1);
    expect(strangeUnits('{3 ft|3 ft}')).toHaveLength(1);
    expect(strangeUnits('{3 ft|90 cm}')).toEqual([]);
  });

  test('refuses a sentence of 26 words', () => {
    expect(tooLong(`${Array(25).fill('go').join(' ')}.`)).toEqual([]);
    expect(tooLong(`${Array(26).fill('go').join(' ')}.`)).toHaveLength(1);
  });
});
