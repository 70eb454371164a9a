import { describe, expect, test } from 'vitest';
import { isBlank, loadLessons, nthTry } from '../../src/lib/course';
import { LAZY_BELOW } from '../../src/lib/course/check';
import { LAZY_WAITS, lazyWait } from '../../src/lib/course/lazy-waits';
import { inTurn, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import { describeTry, gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';

const all = loadLessons()
  .flatMap(({ challenges }) => challenges)
  .filter(({ bite_between_s }) => bite_between_s);
const named = (id: string) => all.find((one) => one.id === id) as Challenge;
const castsOf = (challenge: Challenge) => [1, 2, 3, 4, 5, 6, 7].map((n) => nthTry(challenge, n));
const told = (challenge: Challenge, move: Challenge['reference']) => {
  const graded = gradeTry(challenge, move);
  return { ...describeTry(challenge, graded, 'imperial', null), passed: graded.grade.passed };
};

test('every challenge in which something may bite is looked at', () => {
  expect(all.map(({ id }) => id)).toEqual([
    'strike-a-tap',
    'strike-a-lost-weight',
    'reel-down-and-sweep',
    'set-on-fish-not-rock',
    'taken-on-the-drop',
    'bite-on-semi-slack'
  ]);
});

describe.each(all.map((one): [string, Challenge] => [one.id, one]))('%s', (_, challenge) => {
  test('is passed on no cast by who ends it while a fish could still come', () => {
    for (const cast of [challenge, ...castsOf(challenge)]) {
      for (const name of LAZY_WAITS) {
        const { marks } = gradeTry(cast, lazyWait(name, cast)).grade;
        expect(marks, `${cast.id}: ${name}`).toBeLessThanOrEqual(PASS_MARK - LAZY_BELOW);
      }
    }
  });
});

const drag = sweep(40, 55, 4);
const rock = named('set-on-fish-not-rock');
const bitten = castsOf(rock).find((one) => !isBlank(one)) as Challenge;
const blank = castsOf(rock).find(isBlank) as Challenge;

describe('who drags and is done at once', () => {
  test.each([
    ['a fish was coming', bitten],
    ['none was', blank]
  ])('is told to have left too soon where %s', (_, cast) => {
    const { did, change } = told(cast, drag);
    expect(did).toBe('You left too soon: a fish could still have come.');
    expect(change).toMatch(/^Stay with it longer\./);
  });
});

test('a fish that bites after the hand is done was not let go', () => {
  // Done a second before the bite, which comes while the rod is held for the grade.
  const [bite] = bitten.setup.bites ?? [];
  expect(told(bitten, inTurn(drag, pause(bite.t_s - 5))).did).toMatch(/^You left too soon/);
  expect(told(bitten, inTurn(drag, pause(bite.t_s - 3))).did).toBe('It bit, and you never set.');
});

test('who waits out a cast that has none is right', () => {
  expect(told(blank, inTurn(drag, pause(8.5)))).toMatchObject({
    did: 'Nothing bit, and you left it alone.',
    passed: true
  });
});

test('who sets on a cast that has none hears that it had none, and not to wait for it', () => {
  const { did, change } = told(blank, inTurn(drag, pause(9), sweep(55, 81, 0.6)));
  expect(did).toBe('You set, and this cast had no fish.');
  expect(change).toMatch(/^Felt nothing\? Don’t set\./);
});

test('who sets before the fish comes hears how long before', () => {
  expect(told(bitten, inTurn(drag, sweep(55, 81, 0.6))).did).toMatch(
    /^You set \S+\ss before the bite\.$/
  );
});

test('a sweep that was never made did not meet slack', () => {
  const set = named('reel-down-and-sweep');
  const [cast] = castsOf(set);
  const [bite] = cast.setup.bites ?? [];
  const held = sweep(60, 60, 0.1);
  expect(told(cast, inTurn(held, pause(1), reel(0.4, 0.6)))).toMatchObject({
    did: 'You left too soon: a fish could still have come.',
    why: ''
  });
  expect(told(cast, inTurn(held, pause(bite.t_s + 1), reel(0.4, 0.6)))).toMatchObject({
    did: 'It bit, and you never set.',
    why: ''
  });
});
