import { describe, expect, test } from 'vitest';
import { FOOT_M } from '../../src/lib/model';
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

  test('what the model makes of it is right, and what its band leaves out is not', () => {
    const { figure, band, ...told } = judgeSaid(question, 0);
    expect(figure.of).toBe(of);
    expect(told.right).toBe(figure.value <= band);
    expect(judgeSaid(question, figure.value + 0.99 * band)).toMatchObject({
      right: true,
      reply: key.reply
    });
    const off = judgeSaid(question, figure.value + 1.01 * band);
    expect(off.right).toBe(false);
    expect(off.reply).not.toMatch(/Right/);
    // It is told by how much, and not called close.
    if (nearestOption(question, figure.value + 1.01 * band).id === key.id)
      expect(off.reply).toMatch(/^\{(length|time):[\d.]+\} too much\. /);
  });

  test('a number that is off hears what the option nearest to it hears', () => {
    const { figure, band } = judgeSaid(question, 0);
    for (const option of question.options.filter(({ id }) => id !== key.id)) {
      const [low, high] = option.holds[of] ?? [0, 0];
      const said = Math.max(0, (low + high) / 2);
      expect(nearestOption(question, said).id).toBe(option.id);
      expect(Math.abs(said - figure.value), 'a wrong option within the band').toBeGreaterThan(band);
      expect(judgeSaid(question, said)).toMatchObject({ right: false, reply: option.reply });
    }
  });
});

test('who works it out right is right: the arc of the turn, and the whole foot that it comes to', () => {
  const { question } = asked.find(({ id }) => id === 'your-hands-ruler') ?? asked[0];
  const arc_m = 2 * ((20 * Math.PI) / 180);
  for (const said of [arc_m, 2 * FOOT_M, 0.7]) expect(judgeSaid(question, said).right).toBe(true);
  expect(judgeSaid(question, 1.5 * FOOT_M).right).toBe(false);
});
