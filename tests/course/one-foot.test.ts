import { describe, expect, test } from 'vitest';
import { seededRandom, simulate, type Move } from '../../src/lib/model';
import {
  gradeTry,
  inUnits,
  PASS_MARK,
  REFERENCE_MARK,
  solveCorrection,
  tipTravel,
  type Challenge
} from '../../src/lib/scoring';
import {
  answerOf,
  askedFigures,
  checkLesson,
  findChallenge,
  findLesson,
  isCertainPrediction,
  loadLessons,
  type Lesson,
  type ShownRun
} from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { fewer } from '../samples';

const lesson = findLesson('one-foot', loadLessons()) as Lesson;
const report = checkLesson(lesson);
const challenges = lesson.challenges.map((challenge): [string, Challenge] => [
  challenge.id,
  challenge
]);

function marksOf(challenge: Challenge, move: Move): number {
  return gradeTry(challenge, move).grade.marks;
}

describe('the first lesson', () => {
  test('has nothing that the content check finds fault with', () => {
    expect(report.faults).toEqual([]);
  });

  test('asks, shows, lets try, tells what is felt, and ends with a field drill', () => {
    expect(lesson.sections.map(({ kind }) => kind)).toEqual([
      'predict',
      'see',
      'try',
      'feel',
      'field'
    ]);
  });

  test('says that its lake is invented and that its dry drill has no hook', () => {
    expect(lesson.place.note).toMatch(/invented/i);
    expect(lesson.cautions.join(' ')).toMatch(/no hook/i);
  });

  test('does not happen in the waters of the published checks', () => {
    for (const [, { setup }] of challenges) {
      const { water, rod, line } = setup;
      expect(Math.abs(water.depth_m - 13 * 0.3048)).toBeGreaterThan(0.3);
      expect(Math.abs((rod?.length_m ?? 0) - 7.33 * 0.3048)).toBeGreaterThan(0.1);
      expect(line.diameter_m).toBeLessThan(0.00032);
    }
  });
});

describe.each(challenges)('%s', (_, challenge) => {
  test('is passed in full by its reference and failed by its beginner', () => {
    expect(marksOf(challenge, challenge.reference)).toBeGreaterThanOrEqual(REFERENCE_MARK);
    expect(marksOf(challenge, challenge.beginner)).toBeLessThan(PASS_MARK);
  });

  test('is passed by every hand within a tenth of reach and pace, smooth or at an even rate', () => {
    const random = seededRandom(20);
    for (let i = 0; i < fewer(40, 20); i++) {
      const error = {
        reach: 0.2 * random() - 0.1,
        pace: 0.2 * random() - 0.1,
        isEven: i % 2 === 0
      };
      const { grade } = gradeTry(challenge, byHand(challenge.reference, challenge.start, error));
      expect({ ...error, passed: grade.passed }).toEqual({ ...error, passed: true });
    }
  });

  test('is passed in full by the advice as it is spoken, in whole inches', () => {
    const advice = solveCorrection(challenge);
    const move = advice?.move as Extract<Move, { kind: 'sweep' }>;
    const spoken_m = Math.round((advice?.tipTravel_m ?? NaN) / 0.0254) * 0.0254;
    const turn = ((move.to_deg - move.from_deg) * spoken_m) / (advice?.tipTravel_m ?? NaN);
    expect(marksOf(challenge, { ...move, to_deg: move.from_deg + turn })).toBe(100);
  });

  test('is failed by a rod held still', () => {
    const { from_deg } = challenge.reference as Extract<Move, { kind: 'sweep' }>;
    expect(
      marksOf(challenge, {
        kind: 'sweep',
        from_deg,
        to_deg: from_deg,
        duration_s: 2,
        elevation_deg: 0
      })
    ).toBe(0);
  });
});

test('exactly one foot is failed by twice as far, and by as far in a snatch', () => {
  const challenge = findChallenge('exactly-one-foot', [lesson]) as Challenge;
  const sweep = challenge.reference as Extract<Move, { kind: 'sweep' }>;
  expect(marksOf(challenge, { ...sweep, to_deg: 80, duration_s: 6 })).toBeLessThan(PASS_MARK);
  expect(marksOf(challenge, { ...sweep, duration_s: 0.4 })).toBeLessThan(PASS_MARK);
});

describe('the prediction', () => {
  const [question] = lesson.sections.flatMap((section) =>
    section.kind === 'predict' ? [section.question] : []
  );

  test('has the key that the model’s run gives: jig and tip go about equally far', () => {
    const { key, result } = answerOf(question);
    expect(key.id).toBe('same');
    expect(Math.abs(tipTravel(result) - 0.6096)).toBeLessThan(0.025);
    expect(key.says).toContain('2 ft');
  });

  test('has the same key whatever slack and drag area were', () => {
    expect(isCertainPrediction(question)).toBe(true);
    const [{ value }] = askedFigures(answerOf(question));
    const narrow = question.options.map((option) =>
      option.id === 'same'
        ? { ...option, holds: { travel_m: [value - 0.005, value + 0.005] as [number, number] } }
        : option
    );
    expect(isCertainPrediction({ ...question, options: narrow })).toBe(false);
  });

  test('must have exactly one right option', () => {
    const [half, same, double] = question.options;
    const twice = { ...question, options: [half, same, { ...double, holds: same.holds }] };
    expect(() => answerOf(twice)).toThrow(/has same, double$/);
    const none = { ...question, options: [half, double, { ...half, id: 'x' }] };
    expect(() => answerOf(none)).toThrow(/has none$/);
  });
});

describe('the demonstrations', () => {
  const demos = lesson.sections.flatMap((section) => (section.kind === 'see' ? section.demos : []));
  const resultOf = ({ setup, move, hold_s }: ShownRun) => simulate({ ...setup, move, hold_s });
  const [slow, fast] = demos.map(({ run }) => resultOf(run));

  test('are two sweeps of equal length, as their captions say', () => {
    expect(demos.map(({ caption }) => inUnits(caption, 'imperial'))).toEqual([
      'Slow: it stays down. The dot stays solid.',
      'Fast: it lifts. The dot is a ring while it’s up.'
    ]);
    // The rod bends under the fast one.
    expect(Math.abs(tipTravel(slow) - tipTravel(fast))).toBeLessThan(0.03);
  });

  test('differ in what they teach: only the fast one lifts the jig', () => {
    expect(slow.peak_height_m).toBe(0);
    expect(fast.peak_height_m).toBeGreaterThan(0.05);
  });
});
