import { describe, expect, test } from 'vitest';
import {
  answerOf,
  askedFigures,
  figureWords,
  isOfFigures,
  loadLessons
} from '../../src/lib/course';
import { MEASURES } from '../../src/lib/course/items/measures';
import { tied } from '../tied';

const questions = loadLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) =>
    section.kind === 'predict' ? [[id, section.question] as const] : []
  )
);

describe('what a prediction reveals', () => {
  test.each(questions)('%s: is what its right option speaks of, from the run', (_, question) => {
    const answer = answerOf(question);
    const figures = askedFigures(answer);
    expect(figures.map(({ of }) => of).sort()).toEqual(Object.keys(answer.key.holds).sort());
    for (const { of, value } of figures) {
      if (!question.timed) expect(value).toBe(MEASURES[of].of(answer.result));
    }
  });

  test('is height where height was asked, and no travel beside it', () => {
    const asked = new Set(questions.map(([, { options }]) => Object.keys(options[0].holds)[0]));
    expect(asked.size).toBeGreaterThan(1);
  });

  test('is no second answer where the options are figures', () => {
    const said = (...says: string[]) => ({ options: says.map((one) => ({ says: one })) });
    expect(isOfFigures(said('About {1 ft|30 cm}', '2 s'))).toBe(true);
    expect(isOfFigures(said('Right under where it hit', '2 ft closer'))).toBe(false);
  });

  test('is said with what it is of, in the learner’s units', () => {
    expect(figureWords({ of: 'travel_m', value: -0.3048 }, 'imperial')).toEqual([
      `about ${tied('1~ft')}`,
      'away from you'
    ]);
    expect(figureWords({ of: 'peak_height_m', value: 0.1 }, 'metric')).toEqual([
      tied('10~cm'),
      'off bottom, at its highest'
    ]);
    expect(figureWords({ of: 'contact', value: 0.5 }, 'metric')[0]).toBe(tied('50%'));
    expect(figureWords({ of: 'fall_s', value: 6.2 }, 'imperial')[0]).toBe(tied('6.2~s'));
  });
});
