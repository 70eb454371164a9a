import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { inTurn, lift, pause, reel, sweep, times } from '../../src/lib/course/retrieves/moves';
import { gradeTry, REEL_M_S, type Challenge } from '../../src/lib/scoring';
import { swept } from './swept';

function named(id: string): Challenge {
  const found = findChallenge(id, allLessons());
  if (!found) throw new Error(`no challenge ${id}`);
  return found;
}

type Move = Challenge['reference'];
interface Sweep {
  id: string;
  /** Whole tries, from nothing much to all of it: 0 to 1. */
  moveAt: (part: number) => Move;
  runs: number;
  /** Where its marks jump at a threshold that docs/scoring.md names, how often at most. */
  named?: number;
}

function jumpsOf({ id, moveAt, runs }: Sweep) {
  const challenge = named(id);
  const marksAt = (part: number) => gradeTry(challenge, moveAt(part)).grade.marks;
  const { marks, jumps } = swept(runs, marksAt, MOST_JUMP);
  expect(Math.min(...marks)).toBeLessThan(75);
  expect(Math.max(...marks)).toBe(100);
  return jumps;
}
/** As of the other runs of the model: a step is a hair of the hand, half an inch of line or a part in ninety of a rest. */
const MOST_JUMP = 12;

const reeled = (line_m: number) =>
  inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 1.5), reel(line_m, line_m / REEL_M_S));
const shaken = (deg: number, rest_s = 0.3) =>
  inTurn(...times(5, lift(30, 30 + deg, 0.2), lift(30 + deg, 30, 0.2), pause(rest_s)));

/** The challenge's own move with rests of another length. */
function resting(id: string, factor: number): Move {
  const { reference } = named(id);
  if (reference.kind !== 'sequence') throw new Error(`${id} has no rests`);
  const moves = reference.moves.map((step) =>
    step.kind === 'pause' ? { ...step, duration_s: step.duration_s * factor } : step
  );
  return { ...reference, moves };
}

const SWEEPS: [name: string, swept: Sweep][] = [
  [
    'slack that the reel takes up, from none',
    { id: 'reel-takes-slack', moveAt: (part) => reeled(0.02 + 0.5 * part), runs: 60 }
  ],
  [
    'line that the reel takes in, until it drags the jig',
    { id: 'reel-takes-slack', moveAt: (part) => reeled(0.5 + 0.3 * part), runs: 200, named: 2 }
  ],
  [
    'how far the tip is twitched',
    { id: 'shake-in-place', moveAt: (part) => shaken(0.3 + 1.5 * part), runs: 120 }
  ],
  [
    'how long it rests between twitches',
    { id: 'shake-in-place', moveAt: (part) => shaken(4, 0.02 + 0.3 * part), runs: 90, named: 3 }
  ],
  [
    'one long rest',
    { id: 'dead-stick', moveAt: (part) => resting('dead-stick', 0.3 + part), runs: 90 }
  ],
  [
    'two rests',
    { id: 'cold-water', moveAt: (part) => resting('cold-water', 0.4 + 0.8 * part), runs: 90 }
  ],
  [
    'a drag over rocks, each touched or not',
    {
      id: 'contact-over-rocks',
      moveAt: (part) => sweep(60, 66 + 26 * part, 6),
      runs: 90,
      named: 3
    }
  ],
  [
    'how far a hung hook is shaken, freed or not',
    {
      id: 'free-a-snag',
      moveAt: (part) =>
        inTurn(
          sweep(60, 80, 1),
          pause(0.5),
          sweep(80, 50, 1),
          ...times(3, pause(0.7), sweep(50, 51 + 28 * part, 0.4), sweep(51 + 28 * part, 50, 0.4))
        ),
      runs: 60,
      named: 1
    }
  ]
];

describe('marks of whole tries fall smoothly with', () => {
  test.each(SWEEPS)('%s', (_, swept) => {
    const jumps = jumpsOf(swept);
    if (swept.named === undefined) expect(jumps).toEqual([]);
    expect(jumps.length).toBeLessThanOrEqual(swept.named ?? 0);
  });
});
