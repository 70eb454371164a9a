import { describe, expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { INCH_M, parseSetup } from '../../src/lib/model';
import { pullFor } from '../../src/lib/sandbox/grip';
import { KEY_SPEEDS_M_S } from '../../src/lib/scoring/key-speeds';
import { Reel } from '../../src/lib/sandbox/reel';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { advisedMove, slackPace, type Challenge } from '../../src/lib/scoring';
import { solved } from '../solved';

const advised = allLessons()
  .flatMap(({ challenges }) => challenges)
  .flatMap((challenge) => {
    const advice = advisedMove(challenge, solved(challenge));
    return advice ? [{ id: challenge.id, challenge, ...advice }] : [];
  });

/** What the held button has taken in once it was let go of after so long. */
function heldFor(time_s: number, pace_m_s: number): number {
  const reel = new Reel();
  reel.pace_m_s = pace_m_s;
  reel.turn(0, 1);
  reel.turn(time_s * 1000, 0);
  const step_s = 0.01;
  for (let t_s = 0; t_s < time_s + 1; t_s += step_s) reel.advance(t_s * 1000, step_s);
  return reel.taken_m;
}

/** A fast sweep of an arm, m/s: quicker no hand is told to be. */
const SNAP_M_S = 3 * (KEY_SPEEDS_M_S.at(-1) as number);
/** A phone held upright is as wide, less a thumb at either edge, px. */
const PHONE_PX = 360 - 2 * 24;

describe('what is advised can be done with what there is', () => {
  test('most challenges have a move to advise, some with the reel', () => {
    expect(advised.length).toBeGreaterThan(40);
    expect(advised.filter(({ steps }) => steps.some(({ kind }) => kind === 'reel')).length).toBe(8);
  });

  test.each(advised)('$id', ({ challenge, steps, move }) => {
    for (const step of steps) {
      if (step.kind === 'reel')
        expect(Math.abs(heldFor(step.time_s, slackPace(challenge)) - step.line_m)).toBeLessThan(
          INCH_M / 2
        );
    }
    const turns = move.kind === 'sequence' ? move.moves : [move];
    const limits = ROD_LIMITS[challenge.plane];
    for (const turn of turns) {
      if (turn.kind !== 'sweep' && turn.kind !== 'lift') continue;
      for (const deg of [turn.from_deg, turn.to_deg]) {
        expect(deg).toBeGreaterThanOrEqual(limits.least_deg);
        expect(deg).toBeLessThanOrEqual(limits.most_deg);
      }
      const { length_m } = parseSetup(challenge.setup).rod;
      const way_m = (Math.abs(turn.to_deg - turn.from_deg) * Math.PI * length_m) / 180;
      expect(way_m / turn.duration_s).toBeLessThan(SNAP_M_S);
    }
    expect(pullOf(challenge, steps)).toBeLessThanOrEqual(PHONE_PX);
  });
});

/** The longest single pull of a finger that the steps name, px; of a lift, which has the screen's height, none. */
function pullOf(challenge: Challenge, steps: (typeof advised)[number]['steps']): number {
  const rod = {
    setup: parseSetup(challenge.setup),
    plane: challenge.plane,
    start: challenge.start,
    isFromDeck: true
  };
  const ways = steps.flatMap((step) => (step.kind === 'turn' && step.isAway ? [step.way_m] : []));
  if (challenge.plane === 'lift' || ways.length === 0) return 0;
  return pullFor(rod, Math.max(...ways)) ?? Infinity;
}
