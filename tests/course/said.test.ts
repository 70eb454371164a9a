import { describe, expect, test } from 'vitest';
import { measured } from '../../src/lib/course/items/measure';
import { answerOf, judgeSaid, loadLessons, nearestOption, saidOf } from '../../src/lib/course';

const asked = loadLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) =>
    section.kind === 'predict' && section.question.say ? [{ id, question: section.question }] : []
  )
);

test('a number is asked for where an angler would say one: feet of a drag, seconds of a fall', () => {
  expect(asked.map(({ id }) => id)).toEqual(['line-and-rod', 'rigging']);
});

describe.each(asked)('in $id', ({ question }) => {
  const of = saidOf(question);
  const { key } = answerOf(question);

  test('what the right option says is right, slack and drag area leave it so, and beside it is not', () => {
    const { figure, range } = judgeSaid(question, 0);
    expect(figure.of).toBe(of);
    const { nominal, corners } = measured(question.run, of, 'slack and drag');
    for (const said of [nominal, ...corners, ...range])
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
