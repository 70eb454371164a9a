import { describe, expect, test } from 'vitest';
import { FOOT_M } from '../../src/lib/model';
import { measured } from '../../src/lib/course/items/measure';
import { answerOf, judgeSaid, loadLessons, nearestOption, saidOf } from '../../src/lib/course';

const asked = loadLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) =>
    section.kind === 'predict' && section.question.say ? [{ id, question: section.question }] : []
  )
);

test('several lessons ask for a number and not for a choice', () => {
  expect(asked.length).toBeGreaterThanOrEqual(6);
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

test('who works it out right is right: the tip’s share of the lever, and the whole foot that it comes to', () => {
  const { question } = asked.find(({ id }) => id === 'your-hands-ruler') ?? asked[0];
  // A lever: 4½ of 14 inches at the butt are as much of 6½ feet at the tip.
  const arc_m = (4.5 / 14) * 6.5 * FOOT_M;
  for (const said of [arc_m, 2 * FOOT_M, 0.7]) expect(judgeSaid(question, said).right).toBe(true);
  expect(judgeSaid(question, 1.5 * FOOT_M).right).toBe(false);
});
