import { describe, expect, test } from 'vitest';
import { measured } from '../../src/lib/course/items/measure';
import type { MeasureName } from '../../src/lib/course/items/measures';
import {
  answerOf,
  judgeSaid,
  allLessons,
  nearestOption,
  saidOf,
  type PredictQuestion,
  type ShownRun
} from '../../src/lib/course';

const asked = allLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) =>
    section.kind === 'predict' && section.question.say ? [{ id, question: section.question }] : []
  )
);

test('a number is asked for where an angler would say one: length of a drag, seconds of a fall', () => {
  expect(asked.map(({ id, question }) => [id, question.say])).toEqual([
    ['slack', 'inches'],
    ['line-and-rod', 'feet'],
    ['rigging', 'seconds'],
    ['offshore', 'seconds']
  ]);
});

/** In every reading of slack and drag area; by the learner's own count where there is one. */
function everyReading({ run, timed }: PredictQuestion, of: MeasureName): number[] {
  const read = (one: ShownRun) => {
    const { nominal, corners } = measured(one, of, 'slack and drag');
    return [nominal, ...corners];
  };
  const counted = timed && read(timed.run);
  return read(run).map((value, i) => (counted ? (value * timed.fall_s) / counted[i] : value));
}

test('a count of one’s own leaves the fall it is scaled to far less open', () => {
  const { question } = asked.find(({ id }) => id === 'offshore') ?? asked[0];
  const spread = (one: PredictQuestion) => {
    const values = everyReading(one, 'fall_s');
    return Math.max(...values) / Math.min(...values);
  };
  expect(spread(question)).toBeLessThan(1.05);
  expect(spread({ ...question, timed: undefined })).toBeGreaterThan(1.5);
});

describe.each(asked)('in $id', ({ question }) => {
  const of = saidOf(question);
  const { key } = answerOf(question);

  test('what the right option says is right, slack and drag area leave it so, and beside it is not', () => {
    const { figure, range } = judgeSaid(question, 0);
    expect(figure.of).toBe(of);
    for (const said of [...everyReading(question, of), ...range])
      expect(judgeSaid(question, said)).toMatchObject({ right: true, reply: key.reply });
    expect(judgeSaid(question, 0.99 * range[0]).right).toBe(false);
    const off = judgeSaid(question, 1.01 * range[1]);
    expect(off.right).toBe(false);
    expect(off.reply).not.toMatch(/Right/);
    // It is told by how much, and not called close.
    if (nearestOption(question, 1.01 * range[1]).id === key.id)
      expect(off.reply).toMatch(/^About (\{[^{}|]+\|[^{}|]+\}|\d+ seconds?) too much\. /);
  });

  test('a number that is off hears what the option nearest to it hears', () => {
    const { range } = judgeSaid(question, 0);
    for (const option of question.options.filter(({ id }) => id !== key.id)) {
      const [low, high] = option.holds[of] ?? [0, 0];
      const said = Math.max(0, (low + high) / 2);
      expect(nearestOption(question, said).id).toBe(option.id);
      expect(said < range[0] || said > range[1], 'a wrong option is no part of the right one').toBe(
        true
      );
      expect(judgeSaid(question, said)).toMatchObject({ right: false, reply: option.reply });
    }
  });
});
