import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { inTurn, lift, pause, sweep } from '../../src/lib/course/retrieves/moves';
import type { Move } from '../../src/lib/model';
import { aimWords, describeTry, gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';

const named = (id: string) => findChallenge(id, allLessons()) as Challenge;

function told(id: string, move: Move) {
  const task = named(id);
  const even = byHand(move, task.start, { reach: 0, pace: 0, isEven: true });
  const graded = gradeTry(task, even);
  const { change } = describeTry(task, graded, 'imperial', null);
  return {
    change,
    aim: aimWords(task, graded, 'imperial', null),
    marks: graded.grade.marks
  };
}

/** Up from each of these, and back to so much above it, a rest after each. */
function hops(id: string, froms: readonly number[], kept_deg: number, up_deg = 12): Move {
  const turn = named(id).plane === 'lift' ? lift : sweep;
  return inTurn(
    ...froms.flatMap((from) => [
      turn(from, from + up_deg, 0.25),
      turn(from + up_deg, from + kept_deg, 0.5),
      pause(1.3)
    ])
  );
}

describe('who takes the rod all the way back between hops hears that the next only took up slack', () => {
  test.each(['they-wake', 'three-hops-even', 'three-hops-uneven'])('with a lift: %s', (id) => {
    for (const move of [hops(id, [30, 30, 30], 0), hops(id, [30, 30], 0)]) {
      const { change, aim, marks } = told(id, move);
      expect(marks).toBeLessThan(PASS_MARK);
      expect(change).toBe(
        'Leave the rod up between hops: lower it all the way and the next lift only takes up slack.'
      );
      expect(aim).toBe(change);
    }
  });

  test('with a sweep', () => {
    expect(told('three-hops-sideways', hops('three-hops-sideways', [60, 60, 60], 0)).change).toBe(
      'Leave the rod back between hops: swing it forward and the next pull only takes up slack.'
    );
  });

  test('where the last is held up, too, or all but a little was lowered', () => {
    const held = inTurn(lift(30, 42, 0.25), lift(42, 30, 0.5), pause(1.3), lift(30, 42, 0.25));
    expect(told('three-hops-even', held).change).toMatch(/^Leave the rod up between hops/);
    const nearly = hops('three-hops-even', [30, 32, 34], 2);
    expect(told('three-hops-even', nearly).change).toMatch(/^Leave the rod up between hops/);
  });
});

test('who hops as often, the rod left half up, passes', () => {
  expect(told('they-wake', hops('they-wake', [30, 36, 42], 6)).marks).toBe(100);
});

test('who hopped once alone is not told of slack, nor who left the rod up', () => {
  expect(told('they-wake', hops('they-wake', [30], 0)).change).toBe('Make more hops.');
  expect(told('they-wake', hops('they-wake', [30, 42], 12)).change).not.toContain('slack');
});
