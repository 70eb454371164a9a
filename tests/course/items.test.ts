import { describe, expect, test } from 'vitest';
import {
  FIXED,
  GENERATORS,
  itemOf,
  judgeAnswer,
  lessonOf,
  OBJECTIVES,
  SOURCES,
  type ChooseAnswer,
  type MarkAnswer,
  type OrderAnswer
} from '../../src/lib/course/items';
import { faultsOf } from '../../src/lib/course/items/check-item';
import { saidInches } from '../../src/lib/course/items/said';
import { SLACK_RULE, slackSum } from '../../src/lib/course/items/slack-rule';
import { tipFaults } from '../../src/lib/course/items/tip-said';
import { FOOT_M, simulate } from '../../src/lib/model';

// That what is drawn is sound, `npm run check:items` shows for every seed, a step of `npm test` for the first.
describe('generated questions', () => {
  test('come from at least 25 generators, each with its own name', () => {
    expect(GENERATORS.length).toBeGreaterThanOrEqual(25);
    expect(new Set(SOURCES.map(({ item }) => item)).size).toBe(SOURCES.length);
  });

  test('that say another way of the tip than the run has are found out', () => {
    const item = itemOf('bait-way-of-slow-drag', 1);
    const cases = item.cases.map((one) => ({ ...one, caption: 'The sweep of {5 ft|1.5 m}' }));
    const tip = (item.cases[0] && /of \{([\d½]+) ft/.exec(item.cases[0].caption)?.[1]) ?? '';
    const faults = tipFaults({ ...item, cases }).map((fault) => fault.split(' and goes '));
    expect(faults.map(([said]) => said)).toEqual([
      'the tip is said to go 1.524 m',
      'the tip is said to go 1.500 m'
    ]);
    // The way that the question itself said, before another was put in.
    const tip_m = Number(tip.replace('½', '.5')) * FOOT_M;
    for (const [, goes] of faults) expect(parseFloat(goes)).toBeCloseTo(tip_m, 2);
  });

  test('that stand in order from the first are found out, and none is dealt so', () => {
    const item = itemOf('order-paces', 7);
    const answer = item.answer as OrderAnswer;
    const things = answer.key.map((id) => answer.things.find((thing) => thing.id === id)!);
    const fault = 'the things stand in order from the first';
    expect(faultsOf({ ...item, answer: { ...answer, things } })).toContain(fault);
    expect(faultsOf(item)).toEqual([]);
  });

  test('of what stays down, among moves that all do, are found out', () => {
    const item = itemOf('pace-limit', 1);
    const { options, key } = item.answer as ChooseAnswer;
    const right = options.find(({ id }) => id === key)?.says;
    const stays = item.cases.find(({ caption }) => caption === right) ?? item.cases[0];
    const cases = item.cases.map((one) => ({ ...one, run: stays.run }));
    expect(faultsOf({ ...item, cases })).toContain('as to lifting all of them are right');
    expect(faultsOf(item)).toEqual([]);
  });

  test('with a key that the runs do not show are found out', () => {
    const stop = itemOf('mark-drag', 2);
    const moved = { ...(stop.answer as MarkAnswer), key: (stop.answer.key as number) + 0.001 };
    expect(faultsOf({ ...stop, answer: moved })[0]).toMatch(/^the model says /);

    const row = itemOf('order-weights-fall', 3);
    const turned = { ...(row.answer as OrderAnswer) };
    turned.key = [...turned.key].reverse();
    expect(faultsOf({ ...row, answer: turned })).toContainEqual(
      expect.stringMatching(/^the order is /)
    );

    const kind = itemOf('felt-smooth', 1);
    const { options: kinds, key: felt } = kind.answer as ChooseAnswer;
    const unfelt = kinds.find(({ id }) => id !== felt)?.id ?? '';
    const other = { ...(kind.answer as ChooseAnswer), key: unfelt };
    expect(faultsOf({ ...kind, answer: other })).toEqual(['its chart does not show the key alone']);

    const plan = itemOf('weight-and-pace', 2);
    const { options, key } = plan.answer as ChooseAnswer;
    const wrong = options.find(({ id }) => id !== key)?.id ?? '';
    expect(faultsOf({ ...plan, answer: { ...(plan.answer as ChooseAnswer), key: wrong } })).toEqual(
      [`within its limits is ${key}`]
    );
  });

  test('with a wrong answer inside the model’s band are found out', () => {
    const stop = itemOf('mark-drag', 2);
    const { key, band, ...rest } = stop.answer as MarkAnswer;
    const errors = [{ id: 'close', reply: 'It doesn’t glide on.', value: key + band / 2 }];
    expect(faultsOf({ ...stop, answer: { ...rest, key, band, errors } })).toEqual([
      'error close is within the band'
    ]);
  });

  test('whose count another depth might have are found out', () => {
    const count = itemOf('count-to-depth', 1);
    const { key, options } = count.answer as ChooseAnswer;
    const wrong = options.find(({ id }) => id !== key)?.id ?? '';
    const moved = { ...(count.answer as ChooseAnswer), key: wrong };
    expect(faultsOf({ ...count, answer: moved })).toEqual([`what comes to it is ${key}`]);
  });

  test('that say a converted number, a banned word, or no reason are found out', () => {
    const item = itemOf('mood', 1);
    expect(faultsOf({ ...item, ask: 'How far is {length:0.9}?' })[0]).toMatch(
      /converted, not round/
    );
    expect(faultsOf({ ...item, ask: 'Which shall it be?' })[0]).toMatch(/“shall”/);
    expect(faultsOf({ ...item, explain: 'So.' })).toEqual(['it is not explained']);
    const { options } = item.answer as ChooseAnswer;
    const answer = {
      ...(item.answer as ChooseAnswer),
      options: [{ ...options[0], reply: 'No.' }, ...options.slice(1)]
    };
    expect(faultsOf({ ...item, answer })).toEqual(['a reply gives no reason: No.']);
  });

  test('with a sentence that two wrong answers are told are found out', () => {
    const item = itemOf('mood', 1);
    const { options, key } = item.answer as ChooseAnswer;
    const shared = options.map((one) =>
      one.id === key ? one : { ...one, reply: `${one.reply} It’s the wrong mood.` }
    );
    expect(faultsOf({ ...item, answer: { form: 'choose', options: shared, key } })).toEqual([
      'said twice: It’s the wrong mood.'
    ]);
  });

  test('that explain to everyone what a reply said already are found out', () => {
    const item = itemOf('mood', 1);
    const { options } = item.answer as ChooseAnswer;
    const [first, ...others] = options[0].reply.split(/(?<=\.) /);
    const repeated = others.at(-1) ?? first;
    const explain = `${item.explain} ${repeated}`;
    expect(faultsOf({ ...item, explain })).toEqual([`said twice: ${repeated}`]);
  });

  test('on slack all work the lesson’s sum out in its own words', () => {
    for (const name of ['mark-drag', 'bait-way-of-slow-drag', 'tip-way-for-one-foot'])
      expect(itemOf(name, 1).explain, name).toContain(SLACK_RULE);
    expect(slackSum(2, 14, 0.27)).toMatch(/about \{10 in\|.* In the model: \{11 in\|27 cm\}/);
    expect(slackSum(1, 12, 0)).toMatch(/leaves nothing\. /);
  });

  test('on slack name as much of it in centimeters as in inches', () => {
    for (const inches of [5, 6, 8, 10, 12, 16, 18]) {
      const cm = Number(/\|(\d+) cm/.exec(saidInches(inches))?.[1]);
      // Within a twentieth, as everything is said.
      expect(Math.abs(cm / (2.54 * inches) - 1), `${inches} in`).toBeLessThan(0.05);
    }
  });

  test('are the same for the same seed, and differ between seeds', () => {
    expect(itemOf('mark-drag', 4)).toEqual(itemOf('mark-drag', 4));
    expect(itemOf('mark-drag', 4)).not.toEqual(itemOf('mark-drag', 5));
  });

  test('have the key of a marked place from a plain run of the model', () => {
    const { answer, cases } = itemOf('mark-drag', 6);
    const { setup, move, hold_s } = cases[0].run;
    expect(answer.key).toBe(simulate({ ...setup, move, hold_s }).travel_m);
  });

  test('refuse a seed that is none, and a name that is none', () => {
    expect(() => itemOf('mark-drag', 0)).toThrow('seed: must be 1 or more, got 0');
    expect(() => itemOf('mark-nothing', 1)).toThrow('there is none called "mark-nothing"');
  });
});

describe('fixed questions', () => {
  test('are at least 60, sound, and each is about an objective of a lesson', () => {
    expect(FIXED.length).toBeGreaterThanOrEqual(60);
    for (const item of FIXED) {
      expect(faultsOf(item), item.source).toEqual([]);
      expect(lessonOf(item.objective)).toBeTruthy();
    }
  });

  test('never tell a fish by a line that gives: brush gives, too', () => {
    const said = JSON.stringify(FIXED);
    expect(said).not.toMatch(/sweep if it gives|a fish (gives|does)|gives or (moves|pulls)/i);
  });

  test('state what the model can show with a run behind it, and say so where there is none', () => {
    const backed = FIXED.filter(({ evidence }) => evidence.is !== 'practice');
    expect(backed.length).toBeGreaterThanOrEqual(20);
    const sources = FIXED.flatMap(({ evidence }) =>
      evidence.is === 'practice' ? [evidence.source] : []
    );
    expect(sources.filter((source) => !source.startsWith('common practice, no source'))).toEqual(
      []
    );
  });

  test('whose runs do not show the fact are found out', () => {
    const hop = itemOf('slack-hop', 1);
    expect(faultsOf({ ...hop, cases: [...hop.cases].reverse() })).toEqual([
      'the runs do not show the most first'
    ]);
    const rock = itemOf('bottom-boulder', 1);
    expect(faultsOf({ ...rock, cases: itemOf('bottom-sand', 1).cases })).toEqual([
      'the run does not show long loads'
    ]);
  });

  test('and generated ones leave no objective without a question', () => {
    for (const { id } of OBJECTIVES) {
      expect(SOURCES.filter(({ objective }) => objective === id).length, id).toBeGreaterThan(0);
    }
  });
});

describe('an answer', () => {
  const choice = FIXED[0].answer;

  test('is told what it needs: the reply to the option that was chosen', () => {
    expect(judgeAnswer(choice, 'right').right).toBe(true);
    const wrong = judgeAnswer(choice, 'first-error');
    expect(wrong).toEqual({
      right: false,
      reply: 'Good habits, but a jig can pop loose any time.'
    });
    expect(() => judgeAnswer(choice, 'nothing')).toThrow('no option "nothing"');
  });

  test('on the ruler is right within the model’s own band, and else named after its error', () => {
    // The double of it stands on a ruler that is long enough.
    const answers = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => itemOf('mark-drag', seed).answer);
    const isOnIt = (one: (typeof answers)[number]): one is MarkAnswer =>
      one.form === 'mark' && one.errors.some(({ id }) => id === 'double');
    const answer = answers.find(isOnIt);
    if (!answer) throw new Error('no ruler with the double on it');
    const { key, band, errors } = answer;
    expect(judgeAnswer(answer, key + 0.99 * band).right).toBe(true);
    expect(judgeAnswer(answer, key + 1.01 * band).right).toBe(false);
    const double = errors.find(({ id }) => id === 'double');
    expect(judgeAnswer(answer, double?.value ?? 0).reply).toBe(double?.reply);
  });

  test('in reverse order is told that it is the other way round', () => {
    const { answer } = itemOf('order-paces', 2);
    if (answer.form !== 'order') throw new Error('not an order');
    expect(judgeAnswer(answer, answer.key).right).toBe(true);
    expect(() => judgeAnswer(answer, [])).toThrow('given: no order, []');
    expect(() =>
      judgeAnswer(
        answer,
        answer.key.map(() => answer.key[0])
      )
    ).toThrow('no order');
    expect(judgeAnswer(answer, [...answer.key].reverse()).reply).toBe(answer.reversed);
  });
});
