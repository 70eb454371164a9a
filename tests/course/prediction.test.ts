import { describe, expect, test } from 'vitest';
import {
  answerOf,
  askedFigures,
  figureWords,
  allLessons,
  seenFigureWords,
  toldFigures
} from '../../src/lib/course';
import { figuresOf } from '../../src/lib/course/items/figures';
import { shownScenarioOf } from '../../src/lib/course/items/measure';
import { MEASURED_BY } from '../../src/lib/course/items/measured-by';
import { simulateScenario } from '../../src/lib/model';
import { tied } from '../tied';

const questions = allLessons().flatMap(({ id, sections }) =>
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
      if (!question.timed) expect(value).toBe(MEASURED_BY[of](answer.result));
    }
  });

  test('is height where height was asked, and no travel beside it', () => {
    const asked = new Set(questions.map(([, { options }]) => Object.keys(options[0].holds)[0]));
    expect(asked.size).toBeGreaterThan(1);
  });

  test('is no second answer where the options are figures', () => {
    const [[, { run, options }]] = questions;
    const told = (...says: string[]) =>
      toldFigures({ run, options: says.map((one) => ({ ...options[0], says: one })) }, [
        { of: 'travel_m' as const, value: 0.5 }
      ]).length;
    expect(told('About {1 ft|30 cm}', '2 s')).toBe(0);
    expect(told('Right under where it hit', '2 ft closer')).toBe(1);
  });

  test('is no number of a lift, of which guides see half; of a drag and a fall it is', () => {
    const told = new Map(
      questions.map(([id, question]) => [
        id,
        toldFigures(question, askedFigures(answerOf(question))).length
      ])
    );
    for (const lift of ['hops', 'stroke-and-fall']) expect(told.get(lift)).toBe(0);
    for (const other of ['from-the-boat', 'hook-set']) expect(told.get(other), other).toBe(1);
  });

  test('is the option that guides go for, and no figure, where no run decides it', () => {
    const practised = questions.filter(([, { practice }]) => practice !== undefined);
    expect(practised.map(([id]) => id)).toEqual([
      'first-drop',
      'season-map',
      'season-and-mood',
      'a-morning'
    ]);
    for (const [, question] of practised) {
      const answer = answerOf(question);
      expect(answer.key.id).toBe(question.practice);
      expect(answer.key.reply).toMatch(/^Right\./);
      expect(askedFigures(answer)).toEqual([]);
    }
  });

  test('is the way a jig came before it hung, where it hung, and it is said so', () => {
    const told = (id: string) => {
      const [, question] = questions.find(([lesson]) => lesson === id) ?? questions[0];
      return askedFigures(answerOf(question)).map((one) => seenFigureWords(one, 'imperial')[1]);
    };
    expect(told('snags')).toEqual(['toward you before it hung, then nothing']);
    expect(told('from-the-boat').join()).not.toMatch(/hung/);
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

/** What each call of a lesson is told beside its key, and the lesson's demonstrations. */
const calls = allLessons().flatMap(({ id, sections }) => {
  const demos = sections.flatMap((one) => (one.kind === 'see' ? one.demos : []));
  return sections.flatMap((section) =>
    section.kind === 'predict' ? [{ id, question: section.question, demos }] : []
  );
});

type Run = (typeof calls)[number]['question']['run'];

/** The move alone, to half a degree and a tenth of a second: what a learner cannot tell apart. */
const moveOf = ({ move }: Run) =>
  JSON.stringify(move, (key, value) =>
    typeof value !== 'number' ? value : key.endsWith('_deg') ? Math.round(value) : value.toFixed(1)
  );

/** Those demonstrations that make the move that was called. */
const again = calls
  .map((call) => ({
    ...call,
    demos: call.demos.filter(({ run }) => moveOf(run) === moveOf(call.question.run))
  }))
  .filter(({ question, demos }) => demos.length > 0 && !question.timed);

describe('a call and what is shown after it', () => {
  test.each(again)('$id: one of the moves shown comes to what was told', ({ question, demos }) => {
    const asked = askedFigures(answerOf(question));
    const told = asked.map((one) => seenFigureWords(one, 'imperial')[0]);
    const shown = demos.map(({ run }) => {
      const scenario = shownScenarioOf(run);
      const result = simulateScenario(scenario);
      return asked.map(
        ({ of }) => seenFigureWords({ of, value: MEASURED_BY[of](result) }, 'imperial')[0]
      );
    });
    expect(shown).toContainEqual(told);
  });

  test('most lessons show the move that was called', () => {
    expect(again.length).toBeGreaterThan(calls.length / 2);
  });
});

// A learner who keeps notes compares them: near or far, cold or warm, a slow drag loses as little.
test('slow drags on a tight line lose alike in every lesson that asks for one', () => {
  const asked = ['one-foot', 'your-hands-ruler', 'line-and-rod'];
  const shares = questions
    .filter(([id]) => asked.includes(id))
    .map(([, { run }]) => {
      const { travel_m, tip_m } = figuresOf(shownScenarioOf(run));
      return travel_m / tip_m;
    });
  expect(shares).toHaveLength(asked.length);
  for (const share of shares) {
    // All but an inch or so a foot.
    expect(share).toBeGreaterThan(11 / 12);
    expect(share).toBeLessThanOrEqual(1.02);
  }
});

test('what guides see instead is told to whoever was wrong, too', () => {
  const asked = allLessons().flatMap(({ sections }) =>
    sections.flatMap((section) => (section.kind === 'predict' ? [section.question] : []))
  );
  const told = asked.filter(({ options }) => options.some(({ reply }) => SEEN.test(reply)));
  expect(told.length).toBeGreaterThanOrEqual(3);
  expect(told.flatMap(({ options }) => options).filter(({ reply }) => !SEEN.test(reply))).toEqual(
    []
  );
});
const SEEN = /[Gg]uides see /;
