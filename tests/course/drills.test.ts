import { describe, expect, test } from 'vitest';
import {
  formatLength,
  gradeTry,
  PASS_MARK,
  REFERENCE_MARK,
  type Challenge
} from '../../src/lib/scoring';
import { challengesOf, drills, findChallenge, idsOf, PHASES, TRIES } from '../../src/lib/course';

const taskOf = ({ setup, goals }: Challenge) => JSON.stringify({ setup, goals });
const tasksOf = (drill: string, phase: Challenge['phase'] & string, seed: number) =>
  challengesOf({ drill, phase, seed }).map(taskOf);

function marksOf(challenge: Challenge, move: Challenge['reference']): number {
  return gradeTry(challenge, move).grade.marks;
}

describe.each(drills.map(({ id }) => id))('the drill %s', (drill) => {
  test.each(PHASES)('has as many tries in %s as the schedule says', (phase) => {
    expect(idsOf({ drill, phase, seed: 5 })).toHaveLength(TRIES[phase]);
  });

  test('is the same for the same seed, and found again by each id', () => {
    const [first] = challengesOf({ drill, phase: 'unseen', seed: 12 });
    expect(findChallenge(first.id, [])).toEqual(first);
    expect(tasksOf(drill, 'unseen', 13)).not.toEqual(tasksOf(drill, 'unseen', 12));
  });

  test('goes from one task over and over, through a few in turn, to all in any order', () => {
    expect(new Set(tasksOf(drill, 'seen', 3)).size).toBe(1);
    const [a, b, c, d, again] = tasksOf(drill, 'half_seen', 3);
    expect(new Set([a, b, c, d]).size).toBe(4);
    expect(again).toBe(a);
    const all = drills.find(({ id }) => id === drill)?.practised.length ?? 0;
    expect(new Set(tasksOf(drill, 'unseen', 3)).size).toBe(all);
  });

  test('is hidden in a check', () => {
    for (const { visibility, phase } of challengesOf({ drill, phase: 'kept', seed: 1 })) {
      expect([visibility, phase]).toEqual(['unseen', 'kept']);
    }
  });

  test('holds one task in a check that was never practised, as sound as the others', () => {
    const practised = new Set(tasksOf(drill, 'unseen', 3));
    const fresh = challengesOf({ drill, phase: 'kept', seed: 2 }).filter(
      (challenge) => !practised.has(taskOf(challenge))
    );
    expect(fresh).toHaveLength(1);
    expect(marksOf(fresh[0], fresh[0].reference)).toBeGreaterThanOrEqual(REFERENCE_MARK);
    expect(marksOf(fresh[0], fresh[0].beginner)).toBeLessThan(PASS_MARK);
  });
});

test('the height of a hop is asked in the words in which it is told', () => {
  for (const phase of ['unseen', 'kept'] as const) {
    for (const { ask, goals } of challengesOf({ drill: 'hop', phase, seed: 3 })) {
      const hops = goals.find((goal) => goal.kind === 'hops');
      const [low, high] = hops?.height_m ?? [0, 0];
      const inches = (m: number) => Math.round(m / 0.0254);
      const feet = `${inches(low) / 12} to ${inches(high) / 12} ft`;
      const said = [feet, `${inches(low)} to ${inches(high)} in`].some((one) => ask.includes(one));
      expect(said, ask).toBe(true);
      expect(ask).toContain(
        `${Math.round(low * 100)} to ${formatLength(high, 'metric').replace('\u00a0', ' ')}`
      );
    }
  }
});

describe('an id of no drill', () => {
  test.each(['drag-unseen-1-17', 'drag-unseen-1-0', 'drag-blind-1-1', 'swim-seen-1-1', 'drag'])(
    '%s finds nothing',
    (id) => {
      expect(findChallenge(id, [])).toBeUndefined();
    }
  );

  test('is not made from half a seed', () => {
    expect(() => idsOf({ drill: 'drag', phase: 'seen', seed: 1.5 })).toThrow('got 1.5');
  });
});
