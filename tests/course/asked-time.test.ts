import { expect, test } from 'vitest';
import { challengesOf, loadLessons } from '../../src/lib/course';
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

test('a drag whose pace is marked names the seconds of one that is passed, and no second limit', () => {
  const marked = paced.filter(({ goals }) => goals.some(({ kind }) => kind === 'pace'));
  const told = marked.map((challenge) => {
    const { id, ask, reference } = challenge;
    const duration_s = Number(/about (\d+) seconds/.exec(ask)?.[1]);
    if (reference.kind !== 'sweep') throw new Error('a drag is a sweep');
    const { grade } = gradeTry(challenge, { ...reference, duration_s });
    return [id, duration_s, grade.marks, /\d to \d+ seconds/.test(ask)];
  });
  expect(told).toContainEqual(['light-and-slow', 6, 100, false]);
  expect(told.filter(([, , marks, isRange]) => marks !== 100 || isRange)).toEqual([]);
});
