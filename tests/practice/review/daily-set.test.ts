import { describe, expect, test } from 'vitest';
import {
  dailySet,
  interleaved,
  SET_SIZE,
  standingOf,
  type Askable
} from '../../../src/lib/practice';
import type { StoredAnswer } from '../../../src/lib/wire';
import { anAnswer, daysAt } from '../samples';

const all: Askable[] = ['mark', 'order', 'choose'].flatMap((kind) =>
  ['slack', 'clock', 'hops', 'bites'].map((objective) => ({
    item: `${kind}-${objective}`,
    kind,
    objective,
    thing: `${kind}-${objective}`,
    chance: 1 / 3
  }))
);
const day = (n: number) => new Date(Date.UTC(2030, 4, n, 9)).toISOString();
const answered = (item: string, n: number, right = true) =>
  anAnswer(`${item}-${n}`, { item, at: day(n), right, report: 'knew' });

describe('the set of a day', () => {
  test('is filled with new questions at first, and only with those that are open', () => {
    const isOpen = ({ objective }: Askable) => objective === 'hops';
    const { items, due, fresh } = dailySet(all, [], daysAt(day(1)), isOpen);
    expect({ due, fresh }).toEqual({ due: 0, fresh: 3 });
    expect(items.every(isOpen)).toBe(true);
    expect(dailySet(all, [], daysAt(day(1)))).toMatchObject({ due: 0, fresh: SET_SIZE });
    expect(dailySet(all, [], daysAt(day(1))).items).toEqual(
      dailySet(all, [], daysAt(day(1))).items
    );
  });

  test('mixes kinds and objectives among the new ones', () => {
    const { items } = dailySet(all, [], daysAt(day(1)));
    const most = (of: (one: Askable) => string) =>
      Math.max(...items.map((one) => items.filter((other) => of(other) === of(one)).length));
    // Eight of three kinds and four objectives: three and two at most when spread evenly.
    expect([most(({ kind }) => kind), most(({ objective }) => objective)]).toEqual([3, 2]);
  });

  test('brings back what was wrong the next day, and what was known only later', () => {
    const answers = [answered('mark-slack', 1, false), answered('order-clock', 1, true)];
    const names = (n: number) =>
      dailySet(all, answers, daysAt(day(n))).items.map(({ item }) => item);
    expect(names(2)).toContain('mark-slack');
    expect(names(2)).not.toContain('order-clock');
    expect(names(3)).toContain('order-clock');
  });

  test('shrinks by what was answered today, and is done when all was', () => {
    const answers = all.slice(0, SET_SIZE).map(({ item }) => answered(item, 1));
    expect(dailySet(all, answers.slice(0, 3), daysAt(day(1))).items).toHaveLength(SET_SIZE - 3);
    expect(dailySet(all, answers, daysAt(day(1))).items).toEqual([]);
  });

  test('that was gone through is the last of its day, whatever was reviewed in it', () => {
    let answers = all.slice(0, 3).map(({ item }) => answered(item, 1, false));
    for (const n of [2, 3, 4, 7]) {
      const { items } = dailySet(all, answers, daysAt(day(n)));
      for (const [i, { item }] of items.entries()) {
        const left = dailySet(all, answers, daysAt(day(n))).items;
        expect(left, `day ${n}`).toHaveLength(items.length - i);
        answers = [...answers, answered(item, n, i % 3 !== 0)];
      }
      expect(dailySet(all, answers, daysAt(day(n))).items, `day ${n}`).toEqual([]);
    }
  });

  test('asks one of two that ask for the same thing, due or new, also after a reload', () => {
    const twins = all.map((one, i) => ({ ...one, thing: all[i - (i % 2)].item }));
    const things = (answers: StoredAnswer[], n: number) =>
      dailySet(twins, answers, daysAt(day(n))).items.map(({ thing }) => thing);
    const due = all.map(({ item }) => answered(item, 1, false));
    for (const asked of [things([], 1), things(due, 9)]) {
      expect(asked.length).toBeGreaterThan(4);
      expect(new Set(asked).size).toBe(asked.length);
    }
    expect(things([answered(all[1].item, 1)], 1)).not.toContain(all[0].item);
  });

  test('never grows, however many days were missed', () => {
    const answers = all.map(({ item }) => answered(item, 1));
    const late = dailySet(all, answers, daysAt(new Date(Date.UTC(2033, 0, 1)).toISOString()));
    expect(late).toMatchObject({ due: SET_SIZE, fresh: 0 });
    expect(late.items).toHaveLength(SET_SIZE);
  });

  test('puts no two of a kind or an objective side by side where it can', () => {
    const order = interleaved(all);
    expect([...order].sort(byItem)).toEqual([...all].sort(byItem));
    const alike = order.filter((one, i) => i > 0 && one.objective === order[i - 1].objective);
    expect(alike).toEqual([]);
  });
});

const byItem = (a: Askable, b: Askable) => (a.item < b.item ? -1 : 1);

describe('where a learner stands', () => {
  test('is unknown before the first answer, and then what is known, how surely, until when', () => {
    const answers = [answered('mark-slack', 1), answered('order-slack', 1, false)];
    const [slack, clock] = standingOf(all, answers, daysAt(day(2)));
    expect(clock).toMatchObject({
      objective: 'clock',
      known: null,
      between: null,
      asked: 0,
      of: 3
    });
    expect(slack).toMatchObject({ objective: 'slack', answers: 2, asked: 2, fades_in_days: 0 });
    expect(slack.known).toBeGreaterThan(0.5);
    expect(slack.known).toBeLessThan(1);
    expect(slack.right).toBe(1);
    // What was told today counts as it will be tomorrow: nobody knows for good on the spot.
    const [told] = standingOf(all, [answered('mark-slack', 1)], daysAt(day(1)));
    const [later] = standingOf(all, [answered('mark-slack', 1)], daysAt(day(2)));
    expect(told.known).toBe(later.known);
    expect(told.known).toBeLessThan(1);
    // What was never answered right is no part of what may be forgotten.
    expect(slack.known).toBe(later.known);
    const wrong = [answered('mark-slack', 1, false), answered('order-slack', 1, false)];
    const [none] = standingOf(all, wrong, daysAt(day(2)));
    expect(none).toMatchObject({ answers: 2, right: 0, known: null, fades_in_days: 0 });
    // One right of two, 95 %: 9.5 to 90.5 % (Wilson).
    expect(slack.between?.[0]).toBeCloseTo(0.0945, 3);
    expect(slack.between?.[1]).toBeCloseTo(0.9055, 3);
  });
});
