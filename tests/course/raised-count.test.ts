import { describe, expect, test } from 'vitest';
import { challengesOf, loadLessons } from '../../src/lib/course';
import { lazyRun } from '../../src/lib/course/lazy';
import { held, inTurn, lift, pause } from '../../src/lib/course/retrieves/moves';
import type { Move } from '../../src/lib/model';
import { aimWords, describeTry, gradeTry, type Challenge } from '../../src/lib/scoring';

const lessons = loadLessons().flatMap(({ challenges }) => challenges);
const [drilled] = challengesOf({ drill: 'count', phase: 'unseen', seed: 4 });
const counts = [...lessons, drilled].filter(({ goals: [goal] }) => goal.kind === 'bottom_first');

function told(challenge: Challenge, move: Move) {
  const graded = gradeTry(challenge, move);
  const words = describeTry(challenge, graded, 'imperial', null);
  return {
    ...words,
    marks: graded.grade.marks,
    aim: aimWords(challenge, graded, 'imperial', null)
  };
}

describe.each(counts.map((count) => [count.id, count] as const))('%s', (_, count) => {
  test('is not passed by who raises the rod at the right moment, and says so', () => {
    const { marks, did, change, aim } = told(count, lazyRun('the other way', count));
    expect(marks).toBe(50);
    expect(did).toMatch(/^You raised the rod [\d.]+\ss after it was down\.$/);
    expect(change).toBe('Lower it: raised, it drags the jig.');
    expect(aim).toBe(change);
  });

  test('nor by who raises it before, which is told both', () => {
    const { marks, did, change } = told(count, inTurn(held(45), pause(1), lift(45, 70, 0.6)));
    expect(marks).toBeLessThan(50);
    expect(did).toBe('You raised the rod while it was still falling.');
    expect(change).toMatch(
      /^Lower it, once the line stops running out: count to \d+, to be sure\.$/
    );
  });

  test('but a tip that only twitches up before it goes down is lowered', () => {
    const { reference } = count;
    if (reference.kind !== 'sequence') throw new Error(reference.kind);
    const { moves } = reference;
    const twitched = inTurn(...moves.slice(0, -1), lift(45, 47, 0.2), lift(47, 20, 1));
    expect(told(count, twitched).marks).toBe(100);
  });
});
