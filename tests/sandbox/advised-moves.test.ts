import { describe, expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { dragDrill } from '../../src/lib/course/drills/drag';
import { byHand } from '../../src/lib/course/hand';
import { INCH_M, parseSetup } from '../../src/lib/model';
import { buttonPaces } from '../../src/lib/sandbox/button-pace';
import { pullFor } from '../../src/lib/sandbox/grip';
import { Reel } from '../../src/lib/sandbox/reel';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { taskStepsOf } from '../../src/lib/sandbox/task-steps';
import {
  advisedMove,
  adviceFor,
  gradeTry,
  parseChallenge,
  slackPace,
  solveCorrection,
  type Challenge,
  type Correction
} from '../../src/lib/scoring';
import { FIRST_KEY_SPEED, KEY_SPEEDS_M_S } from '../../src/lib/scoring/key-speeds';
import { singleMove } from '../../src/lib/scoring/single-move';
import { sampled } from '../samples';
import { byButtons } from './by-buttons';

/** What would have been right of each: it takes many runs, and both parts ask for it. */
const solved: readonly [Challenge, Correction | null][] = allLessons()
  .flatMap(({ challenges }) => challenges)
  .map((challenge) => [challenge, solveCorrection(challenge)]);

const advised = solved.flatMap(([challenge, correction]) => {
  const advice = advisedMove(challenge, correction);
  return advice ? [{ id: challenge.id, challenge, ...advice }] : [];
});

/** What the held button has taken in once it was let go of after so long. */
function takenIn(time_s: number, pace_m_s: number): number {
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
        expect(Math.abs(takenIn(step.time_s, slackPace(challenge)) - step.line_m)).toBeLessThan(
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

/** Tasks that one turn does, found by running the model backwards. */
const drags = solved.flatMap(([challenge, correction]) => {
  const move = correction?.move;
  return move ? [{ id: challenge.id, challenge, correction, move }] : [];
});

/** The pace at which the task’s buttons begin, m/s. */
function paceOf(challenge: Challenge): number {
  const { m_s, first } = buttonPaces(
    taskStepsOf(challenge),
    parseSetup(challenge.setup).rod.length_m
  );
  return m_s[first];
}

test('there are drags to be made by the button', () => {
  expect(drags.length).toBeGreaterThanOrEqual(15);
});

test.each(drags)('$id is passed by its button, held as far as is told', ({ challenge, move }) => {
  const input = byButtons(challenge, move, paceOf(challenge), 0);
  expect(gradeTry(challenge, input).grade.passed).toBe(true);
});

/** Pulled too far and much too fast, and by the button half of the way. */
const misses = (one: (typeof drags)[number]) => {
  const { challenge, move } = one;
  const rushed = byHand(challenge.reference, challenge.start, { reach: 1, pace: 4, isEven: true });
  const isTurn = move.kind === 'sweep' || move.kind === 'lift';
  const half = isTurn && { ...move, to_deg: (move.from_deg + move.to_deg) / 2 };
  const short = half && byButtons(challenge, half, paceOf(challenge), 0);
  return [rushed, ...(short ? [short] : [])];
};

/** Of a fix, s; NaN where it tells none. */
const toldTime = (words: string) => Number(/in (?:about )?([\d.]+)\ss\.$/.exec(words)?.[1]);

const timed = drags.flatMap((one) =>
  misses(one).flatMap((input) => {
    const { challenge, correction } = one;
    const made = gradeTry(challenge, input);
    const { words } = adviceFor(challenge, made, 'imperial', correction);
    const held_s = toldTime(words);
    return held_s ? [{ ...one, words, held_s }] : [];
  })
);

test('most are told a time', () => {
  expect(timed.length).toBeGreaterThan(0.8 * 2 * drags.length);
});

/** A drag by the task’s button, held so long. */
const heldFor = (challenge: Challenge, held_s: number) => {
  const { length_m } = parseSetup(challenge.setup).rod;
  const turn_deg = ((paceOf(challenge) * held_s) / length_m) * (180 / Math.PI);
  return byButtons(challenge, singleMove(challenge, turn_deg, held_s), paceOf(challenge), 0);
};

test.each(timed)('$id is passed by its button, held for the time in “$words”', (one) => {
  const input = heldFor(one.challenge, one.held_s);
  expect(gradeTry(one.challenge, input).grade.passed).toBe(true);
});

const drilled = [...dragDrill.practised, ...dragDrill.fresh].map((condition, i) =>
  parseChallenge({ ...condition(), id: `drag-seen-0-${i + 1}`, visibility: 'seen' })
);

test.each(sampled(drilled, 6))('so is the drill’s “$ask”', (challenge) => {
  const { reference } = challenge;
  if (reference.kind !== 'sweep') throw new Error('a drag is a sweep');
  const correction = solveCorrection(challenge);
  for (const part of [0.5, 1.6]) {
    const to_deg = reference.from_deg + part * (reference.to_deg - reference.from_deg);
    const missed = byButtons(challenge, { ...reference, to_deg }, paceOf(challenge), 0);
    const made = gradeTry(challenge, missed);
    const { words } = adviceFor(challenge, made, 'imperial', correction);
    const { grade } = gradeTry(challenge, heldFor(challenge, toldTime(words)));
    expect(grade.passed, `${words} ${grade.marks}`).toBe(true);
  }
});

test('light and slow was not, at the pace of open water', () => {
  const slow = drags.find(({ id }) => id === 'light-and-slow');
  if (!slow) throw new Error('one turn does it');
  const input = byButtons(slow.challenge, slow.move, KEY_SPEEDS_M_S[FIRST_KEY_SPEED], 0);
  expect(gradeTry(slow.challenge, input).grade.passed).toBe(false);
});

test('where nothing is pulled the buttons begin as in open water', () => {
  expect(buttonPaces([], 2.1).first).toBe(FIRST_KEY_SPEED);
});
