import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { COVERAGE, itemOf, LAST_CHECKED_SEED, SOURCES } from '../../src/lib/course/items';
import { challengeOfRound } from '../../src/lib/server/clinic-answers';
import { adviceAfter, newRoom, nextState, talkLeft } from '../../src/lib/server/clinic-flow';
import { PARALLELS } from '../../src/lib/server/clinic-parallel';
import { clinicOffer, planFor, PREPARED, roomLessons } from '../../src/lib/server/clinic-plan';
import { pollOf } from '../../src/lib/server/clinic-poll';
import type { Poll } from '../../src/lib/compute/jobs/poll';
import { drillsIn } from '../../src/lib/server/clinic-view';
import { CODE_LETTERS, CODE_PATTERN, newCode } from '../../src/lib/server/room-code';
import { PLAN_MINUTES, type Round } from '../../src/lib/wire';

const NOW = '2031-05-01T08:00:00.000Z';
const lessons = loadLessons();
const half = () => 0.5;
const minutesOf = (plan: readonly Round[]) => plan.reduce((sum, round) => sum + round.minutes, 0);
const kindsOf = (plan: readonly Round[]) => plan.map(({ kind }) => kind);

describe.each(PLAN_MINUTES)('the plan of %i minutes', (minutes) => {
  const plan = planFor(minutes, PREPARED[minutes], lessons, half);

  test('fits, and leaves no more time over than a lesson would take', () => {
    const { part } = clinicOffer(lessons);
    expect(minutesOf(plan)).toBeLessThanOrEqual(minutes);
    expect(minutesOf(plan)).toBeGreaterThan(minutes - part);
  });

  test('has of each lesson a question, one like it, a challenge and a drill, in this order', () => {
    const parts = plan.filter((round) => 'lesson' in round);
    for (const lesson of PREPARED[minutes]) {
      const from = plan.findIndex((round) => 'lesson' in round && round.lesson === lesson);
      expect(kindsOf(plan.slice(from, from + 4))).toEqual(['predict', 'ask', 'try', 'talk']);
    }
    expect(parts.at(-1)).toMatchObject({ kind: 'try', again: true, lesson: PREPARED[minutes][0] });
  });

  test('asks nobody to swing a rod in the room', () => {
    const drills = plan.filter((round) => round.kind === 'talk' && round.isDrill);
    expect(drills.length).toBeGreaterThan(0);
    for (const round of drills)
      expect(round.kind === 'talk' && round.title).toMatch(/: (at home, no hook|another day)$/);
  });

  test('every round can be shown', () => {
    for (const round of plan) {
      if (round.kind === 'predict' || round.kind === 'ask') {
        expect(pollOf(round).options.length).toBeGreaterThan(2);
      }
      if (round.kind === 'try') expect(challengeOfRound(round).id).toBe(round.challenge);
    }
  });
});

describe('a plan of the guide’s own', () => {
  test('keeps the order of the course, and draws its figures from the chance it is given', () => {
    const made = planFor(45, ['speed', 'one-foot'], lessons, half);
    expect(made).toEqual(planFor(45, PREPARED[45], lessons, half));
    const seeds = (chance: number) =>
      planFor(45, ['speed'], lessons, () => chance).flatMap((round) =>
        round.kind === 'ask' ? [round.seed] : []
      );
    expect(seeds(0)).toEqual([1]);
    // The last that was checked: a room gets no question that nobody has looked at.
    expect(seeds(0.999)).toEqual([LAST_CHECKED_SEED]);
  });

  test.each([
    ['more than the time holds', ['one-foot', 'slack', 'speed'], 'take'],
    ['nothing', [], 'choose'],
    ['a lesson that a room cannot do', ['safety'], 'safety']
  ])('refuses %s', (_, chosen, says) => {
    expect(() => planFor(45, chosen, lessons, half)).toThrow(says);
  });
});

test('after “one foot” the right answer is no more often the least or the greatest', () => {
  const ranks = Array.from({ length: 12 }, (_, i) => {
    const { answer } = itemOf(PARALLELS['one-foot'].item, i + 1);
    if (answer.form !== 'choose') throw new Error('no options');
    const key = answer.options.find(({ id }) => id === answer.key)?.value ?? 0;
    return answer.options.filter(({ value = 0 }) => value < key).length;
  });
  for (const rank of [0, 1, 2]) {
    expect(ranks.filter((one) => one === rank).length).toBeGreaterThanOrEqual(3);
  }
});

test('what is played to an answer is the run of the right option', () => {
  const rightRun = (seed: number) => {
    const { cases, answer } = itemOf('pace-limit', seed);
    if (answer.form !== 'choose') throw new Error('no options');
    const right = answer.options.find(({ id }) => id === answer.key)?.says;
    return { first: cases[0].run, right: cases.find(({ caption }) => caption === right)?.run };
  };
  // One whose right option is not drawn first: any run would do for the others.
  const seeds = Array.from({ length: 20 }, (_, i) => i + 1);
  const isFirst = ({ first, right }: ReturnType<typeof rightRun>) =>
    JSON.stringify(first) === JSON.stringify(right);
  const seed = seeds.find((one) => !isFirst(rightRun(one)));
  if (!seed) throw new Error('the first is always right');
  const { run } = pollOf({ kind: 'ask', lesson: 'speed', item: 'pace-limit', seed, minutes: 3 });
  expect(run).toEqual(rightRun(seed).right);
  expect(run).not.toEqual(rightRun(seed).first);
});

/** Words that tell an answer from the others: long enough to mean something, said nowhere else. */
function ownWords({ ask, about, options, key }: Poll): string[] {
  const words = (text: string) => text.toLowerCase().match(/\{[^}]+\}|[a-z]{4,}|\d+/g) ?? [];
  const says = options.find(({ id }) => id === key)?.says ?? '';
  const others = options.filter(({ id }) => id !== key).map((option) => option.says);
  const elsewhere = new Set([ask, about, ...others].flatMap(words));
  return words(says).filter((word) => !elsewhere.has(word));
}

describe.each(roomLessons(lessons))('in $id', (lesson) => {
  const planned = [0, 0.745].flatMap((chance) =>
    planFor(45, [lesson.id], lessons, () => chance).filter(
      ({ kind }) => kind === 'predict' || kind === 'ask'
    )
  );
  // The question is the same in each, and is run once.
  const rounds = [...new Map(planned.map((round) => [JSON.stringify(round), round])).values()];

  test('question and parallel item have a hint, which says nothing of what is right', () => {
    for (const poll of rounds.map(pollOf)) {
      expect(poll.hint, poll.ask).toBeTruthy();
      const hint = poll.hint?.toLowerCase() ?? '';
      expect(
        ownWords(poll).filter((word) => new RegExp(`(?<!\\w)${word}(?!\\w)`).test(hint))
      ).toEqual([]);
    }
  });

  test('the parallel item asks for an objective of the lesson', () => {
    const asked = Object.values(COVERAGE[lesson.id]).flat();
    expect(asked).toContain(PARALLELS[lesson.id].item);
  });
});

test('the season map is offered, and no two questions of a plan ask for the same thing', () => {
  expect(roomLessons(lessons).map(({ id }) => id)).toContain('season-map');
  const things = Object.values(PARALLELS).map(
    ({ item }) => SOURCES.find((one) => one.item === item)?.thing ?? ''
  );
  expect(new Set(things).size).toBe(things.length);
});

describe('a room’s flow', () => {
  test.each([
    [{ a: 34, b: 66 }, [], 'teach'],
    [{ a: 35, b: 65 }, [], 'discuss'],
    [{ a: 70, b: 30 }, [], 'discuss'],
    [{ a: 71, b: 29 }, [], 'explain'],
    [{ a: 34, b: 66 }, ['hint'], 'discuss'],
    [{ a: 34, b: 66 }, ['hint', 'talk'], 'explain slowly'],
    [{ a: 50, b: 50 }, ['talk'], 'explain slowly'],
    [{ a: 71, b: 29 }, ['talk'], 'explain'],
    [{ a: 10, b: 90 }, ['talk'], 'teach'],
    [{}, [], null]
  ] as const)('%o with a right, after %o, calls for %s', (counts, given, advice) => {
    expect(adviceAfter(counts as Record<string, number>, 'a', given)).toBe(advice);
  });

  const plan = planFor(45, PREPARED[45], lessons, half);
  const after = (...actions: Parameters<typeof nextState>[1][]) =>
    actions.reduce((state, action) => nextState(state, action, NOW), newRoom({ name: '', plan }));

  test('pressing “vote again” twice is one second vote', () => {
    const once = after({ do: 'hold' }, { do: 'again' });
    expect(nextState(once, { do: 'again' }, NOW)).toEqual(once);
    expect(once).toMatchObject({ ballot: 2, phase: 'open' });
  });

  test('a talk pressed twice goes on as it began, and is over with the next vote', () => {
    const talk = after({ do: 'hold' }, { do: 'talk' });
    const later = '2031-05-01T08:00:30.400Z';
    expect(talkLeft(nextState(talk, { do: 'talk' }, later), later)).toBe(90);
    expect(talkLeft(talk, '2031-05-01T09:00:00.000Z')).toBe(0);
    expect(talkLeft(nextState(talk, { do: 'again' }, later), later)).toBeNull();
  });

  test('another round begins without the help of the one before', () => {
    const next = after({ do: 'hint' }, { do: 'go', to: 2 });
    expect(next).toMatchObject({ given: [], aid: null, phase: 'open', ballot: 1 });
  });

  test('an end by mistake is undone, with the votes as they were', () => {
    const ended = after({ do: 'go', to: 2 }, { do: 'end' });
    expect(ended).toMatchObject({ isOver: true, phase: 'held' });
    const open = nextState(ended, { do: 'resume' }, NOW);
    expect(open).toMatchObject({ isOver: false, phase: 'open', at: 2, ballot: 1 });
    expect(nextState(open, { do: 'resume' }, NOW)).toBe(open);
  });

  test('of a lesson that was skipped there is no drill to take along', () => {
    const titles = (state: ReturnType<typeof after>) => drillsIn(state).map(({ title }) => title);
    const all = titles({ ...after(), done: null });
    expect(all).toHaveLength(2);
    const second = plan.findLastIndex(({ kind }) => kind === 'predict');
    const steps = plan.map((_, to) => ({ do: 'go' as const, to }));
    expect(titles(after(...steps, { do: 'end' }))).toEqual([]);
    expect(titles(after({ do: 'go', to: second }, { do: 'reveal' }))).toEqual([all[1]]);
    expect(titles(after({ do: 'go', to: 1 }, { do: 'hold' }, ...steps))).toEqual([all[0]]);
  });

  test('codes are six of 28 letters and digits, none like another', () => {
    expect(new Set(CODE_LETTERS).size).toBe(28);
    expect(CODE_LETTERS).not.toMatch(/[01IOLUBS]/);
    for (let i = 0; i < 200; i++) expect(newCode()).toMatch(CODE_PATTERN);
  });
});
