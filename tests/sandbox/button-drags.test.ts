import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { dragDrill } from '../../src/lib/course/drills/drag';
import { parseSetup } from '../../src/lib/model';
import { byHand } from '../../src/lib/course/hand';
import { FIRST_KEY_SPEED, KEY_SPEEDS_M_S } from '../../src/lib/scoring/key-speeds';
import { singleMove } from '../../src/lib/scoring/single-move';
import { buttonPaces } from '../../src/lib/sandbox/button-pace';
import { taskStepsOf } from '../../src/lib/sandbox/task-steps';
import {
  adviceFor,
  gradeTry,
  parseChallenge,
  solveCorrection,
  type Challenge
} from '../../src/lib/scoring';
import { sampled } from '../samples';
import { solved } from '../solved';
import { byButtons } from './by-buttons';

/** Tasks that one turn does, found by running the model backwards. */
const drags = allLessons()
  .flatMap(({ challenges }) => challenges)
  .flatMap((challenge) => {
    const correction = solved(challenge);
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
