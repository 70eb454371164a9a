import { expect, test } from 'vitest';
import { challengesOf, loadLessons } from '../../src/lib/course';
import { FOOT_M } from '../../src/lib/model';
import { describeTry, gradeTry } from '../../src/lib/scoring';

const lessons = loadLessons().flatMap(({ challenges }) => challenges);
const drilled = challengesOf({ drill: 'drag', phase: 'unseen', seed: 4 }).slice(0, 6);
const paced = [...lessons, ...drilled].filter(
  ({ ask }) => /\d seconds/.test(ask) && /rag/.test(ask)
);

test('a drag in half the seconds that were named is told the seconds it took', () => {
  const told = paced.flatMap((challenge) => {
    const { reference, goals } = challenge;
    if (reference.kind !== 'sweep' || !goals.some(({ kind }) => kind === 'pace')) return [];
    const half = { ...reference, duration_s: reference.duration_s / 2 };
    const { did } = describeTry(challenge, gradeTry(challenge, half), 'imperial', null);
    return [{ id: challenge.id, isTold: /, in [\d.]+\ss, and the jig/.test(did) }];
  });
  expect(told.length).toBeGreaterThan(6);
  expect(told.filter(({ isTold }) => !isTold)).toEqual([]);
});

test('a range of seconds that is named is that of the pace which is marked', () => {
  const named = paced.flatMap(({ id, ask, goals }) => {
    const [, low, high] = /(\d+) to (\d+) seconds/.exec(ask) ?? [];
    const pace = goals.find((goal) => goal.kind === 'pace');
    const travel = goals.find((goal) => goal.kind === 'travel');
    if (!low || !pace || !travel) return [];
    const way_m = Math.round((2 * travel.target_m) / FOOT_M) * (FOOT_M / 2);
    return [[id, Number(low), Number(high), ...pace.m_s.map((m_s) => Math.round(way_m / m_s))]];
  });
  expect(named).toEqual([['light-and-slow', 3, 20, 20, 3]]);
});
