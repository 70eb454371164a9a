import * as v from 'valibot';
import { expect, test } from 'vitest';
import { claim } from '../../src/lib/course/basis';
import { FIXED, GENERATORS, itemOf, SOURCES } from '../../src/lib/course/items';
import { claimedFaults, claimedRunFaults, statedIn } from '../../src/lib/course/items/claimed';
import { QUESTION_CLAIMS } from '../../src/lib/course/items/claims';

test('what questions say rests on is written as in lessons, or is their answer', () => {
  const named = Object.keys(QUESTION_CLAIMS);
  expect(named.filter((one) => !SOURCES.some(({ item }) => item === one))).toEqual([]);
  for (const { says, basis } of Object.values(QUESTION_CLAIMS).flat()) {
    const stated = { says: [...says], basis: basis === 'answer' ? 'practice' : basis };
    expect(v.safeParse(claim, stated).success, says[0]).toBe(true);
  }
});

test('every sentence of a written question names its run, its answer or common practice', () => {
  expect(FIXED.flatMap((item) => claimedFaults(item))).toEqual([]);
});

test('and one without a mark is refused, in a question that a run decides', () => {
  const heavier = itemOf('weight-heavier', 1);
  const marks = QUESTION_CLAIMS['weight-heavier'].filter(({ basis }) => basis !== 'practice');
  expect(claimedFaults(heavier, marks)).toContain(
    'nothing stands behind it: Some guides go as light as they can; some want all the feel they can get.'
  );
  const untold = { ...heavier, explain: `${heavier.explain} Big ones like it, too.` };
  expect(claimedFaults(untold)).toEqual(['nothing stands behind it: Big ones like it, too.']);
});

test('in one of common practice nothing follows from its answer', () => {
  const follow = itemOf('hops-follow', 1);
  const marks = [...QUESTION_CLAIMS['hops-follow'], { says: ['Follow it down'], basis: 'answer' }];
  expect(claimedFaults(follow)).toEqual([]);
  expect(claimedFaults(follow, marks as typeof QUESTION_CLAIMS.any)).toEqual([
    'no run decides its answer, so nothing follows from it'
  ]);
});

test('a mark on what is not said is found out', () => {
  const marks = [...QUESTION_CLAIMS['hops-follow'], { says: ['It sinks.'], basis: 'practice' }];
  expect(claimedFaults(itemOf('hops-follow', 1), marks as typeof QUESTION_CLAIMS.any)).toEqual([
    'it is claimed and not said: It sinks'
  ]);
});

test('a drawn number stands for any other', () => {
  const fall = itemOf('fall-count', 1);
  expect(statedIn(fall).join(' ')).toMatch(/this one about # a second/);
  expect(claimedFaults(fall)).toEqual([]);
});

test('a question that a run decides has claims, drawn or written', () => {
  const decided = [
    ...FIXED.filter(({ evidence }) => evidence.is !== 'practice').map(({ source }) => source),
    ...GENERATORS.filter(({ objective }) => !/^season/.test(objective)).map(({ id }) => id)
  ];
  expect(decided.filter((one) => !QUESTION_CLAIMS[one])).toEqual([]);
});

// That all of them do, `npm run check:items` shows, as a step of `npm test`.
test('a run that does not show what is said is found out', () => {
  const shows = { run: 'sand', sign: 'smooth', unknowns: 'drag' } as const;
  const says = ['Sand is even from the first inch.'];
  expect(claimedRunFaults({ 'bottom-mud': [{ says, basis: shows }] })).toEqual([]);
  const claims = { 'bottom-mud': [{ says, basis: { ...shows, run: 'chunk rock' } }] };
  expect(claimedRunFaults(claims)).toEqual([
    'bottom-mud, "Sand is even from the first inch.": the run does not show smooth'
  ]);
});
