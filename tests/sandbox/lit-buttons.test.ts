import { describe, expect, test } from 'vitest';
import { allLessons, drills } from '../../src/lib/course';
import { isVaried, nthTry } from '../../src/lib/course/nth-try';
import { parseChallenge, type Challenge } from '../../src/lib/scoring';
import { taskStepsOf } from '../../src/lib/sandbox/task-steps';
import { sampled, TAKES_ALL } from '../samples';
import { byLights } from './by-lights';

/** So long after a light a hand lets go, s: from quick to slow. */
const REACTIONS_S = [0.15, 0.25, 0.35];
/** A hand that has to look first. */
const LATE_S = 0.5;
/** Tries of a task of which each meets something else: the drop has its first without a fish in the fourth. */
const TRIES = [1, 2, 3, 4];

const ofLessons = allLessons()
  .flatMap(({ challenges }) => challenges)
  .flatMap((one) => (isVaried(one) ? [one, ...TRIES.map((n) => nthTry(one, n))] : [one]));

const ofDrills = drills.flatMap(({ id, practised, fresh }) =>
  [...practised, ...fresh].map((condition, i) =>
    parseChallenge({ ...condition(), id: `${id}-${i + 1}`, visibility: 'unseen' })
  )
);

const all = [...ofLessons, ...ofDrills].map((challenge) => ({ id: challenge.id, challenge }));

/** Marks of one who follows the lights, with what was pressed. */
function markOf(challenge: Challenge, reaction_s: number, counted_s?: number) {
  const { grade, pressed } = byLights(challenge, reaction_s, counted_s);
  return { reaction_s, counted_s, passed: grade.passed, marks: grade.marks, pressed };
}

/** The same by reaction: the quickest and the slowest, and those between. */
const marksOf = (challenge: Challenge, counted_s?: number) =>
  sampled(REACTIONS_S, 2).map((reaction_s) => markOf(challenge, reaction_s, counted_s));

/** A lesson's own task has both hands; what varies it, and a drill's, the quick and the slow one by turns. */
const own = new Set(allLessons().flatMap(({ challenges }) => challenges));
const handed = all.map((one, i) => {
  const ends_s = sampled(REACTIONS_S, 2);
  const isWhole = TAKES_ALL || own.has(one.challenge);
  return { ...one, hands_s: isWhole ? ends_s : [ends_s[i % 2]] };
});

describe('who presses the bright button, and lets go when the light has moved on, passes', () => {
  test.each(handed)('$id', ({ challenge, hands_s }) => {
    const made = hands_s.map((reaction_s) => markOf(challenge, reaction_s));
    expect(made.filter(({ passed }) => !passed)).toEqual([]);
  });
});

test('who reels up slack may let go later still', () => {
  const late = ofLessons.filter(({ goals }) => goals.some(({ kind }) => kind === 'reeled'));
  expect(late.map(({ id }) => id)).toContain('reel-takes-slack');
  for (const challenge of late) {
    const { grade, pressed } = byLights(challenge, LATE_S);
    expect(grade.passed, `${challenge.id}: ${pressed.join(', ')}`).toBe(true);
  }
});

/** Of tasks that ask how much slack is reeled in. */
const reeled = all.filter(({ challenge: { goals } }) =>
  goals.some(({ kind }) => kind === 'reeled')
);

describe('who reels until the next button lights, and lets go at once or late, reels once and has it', () => {
  test.each(reeled)('$id', ({ challenge }) => {
    for (const reelReaction_s of sampled([0, ...REACTIONS_S, LATE_S], 3)) {
      const { grade, pressed } = byLights(challenge, 0.25, null, reelReaction_s);
      const where = `${reelReaction_s}: ${pressed.join(', ')}, ${grade.marks}`;
      expect(
        pressed.filter((one) => one.startsWith('in ')),
        where
      ).toHaveLength(1);
      expect(grade.passed, where).toBe(true);
    }
  });
});

/** How long the last drag takes that no light ends out of sight, s; 0 where the task ends otherwise. */
function countedIn(challenge: Challenge): number {
  const last = taskStepsOf(challenge).at(-1);
  return last?.does === 'up' && !last.isStroke ? last.way_deg / last.pace_deg_s : 0;
}

/** A count of seconds is off by so much: nobody counts better without a clock. A design value, s. */
const COUNT_OFF_S = 0.1;

/** Out of sight; a fall is counted there, and no light tells of it. */
const hidden = all.filter(
  ({ challenge: { visibility, goals } }) =>
    visibility !== 'seen' && goals.every(({ kind }) => kind !== 'bottom_first')
);

describe('out of sight so does who holds the last drag for its own time', () => {
  test.each(hidden)('$id', ({ challenge }) => {
    const time_s = countedIn(challenge);
    // Where the last button is none to be counted, no count makes a difference.
    const isCounted = taskStepsOf(challenge).at(-1)?.does === 'up';
    const offs_s = isCounted ? [-COUNT_OFF_S, 0, COUNT_OFF_S] : [0];
    const hands = offs_s.flatMap((off_s) =>
      REACTIONS_S.map((reaction_s) => ({ reaction_s, counted_s: Math.max(0, time_s + off_s) }))
    );
    // Of nine the shortest, the one in the middle and the longest.
    const made = sampled(hands, isCounted ? 3 : 2).map(({ reaction_s, counted_s }) =>
      markOf(challenge, reaction_s, counted_s)
    );
    expect(made.filter(({ passed }) => !passed)).toEqual([]);
  });
});

/** So long no lesson's rod takes to go down after a hop, s. */
const LOWERED_S = 3;
const lowered = hidden.filter(({ challenge }) => {
  const last = taskStepsOf(challenge).at(-1);
  return last?.does === 'down' && !last.isStroke;
});

describe('out of sight too the light moves on once the rod is lowered as far as it goes in the task', () => {
  test.each(lowered)('$id', ({ challenge }) => {
    const { pressed } = byLights(challenge, 0.25, 0);
    const [name, s] = pressed.at(-1)?.split(' ') ?? [];
    expect(name).toBe('down');
    expect(Number(s)).toBeLessThan(LOWERED_S);
  });
});

/** Each fall out of sight alone, of lessons and drills. */
const counted = all.filter(
  ({ challenge: { visibility, goals } }) =>
    visibility !== 'seen' && goals.every(({ kind }) => kind === 'bottom_first')
);

describe('out of sight no light tells that the jig is down: who counts, and then lowers the rod as told, passes', () => {
  test('in lessons and in drills', () => expect(counted.length).toBeGreaterThan(8));

  test.each(counted)('$id', ({ challenge }) => {
    expect(challenge.ask).toMatch(/ount.*ower the rod when you think it’s (down|there)\./);
    const made = marksOf(challenge, 0);
    expect(made.filter(({ passed }) => !passed)).toEqual([]);
    for (const { pressed } of made) expect(pressed).toEqual([expect.stringMatching(/^down /)]);
  });
});

const named = ofDrills.flatMap((challenge) => {
  const [, s] = /in about (\d+) second/.exec(challenge.ask) ?? [];
  return s ? [{ ask: challenge.ask, challenge, held_s: Number(s) }] : [];
});

test('drags out of sight name their seconds', () => expect(named.length).toBeGreaterThan(10));

test.each(named)('the button held for the seconds asked passes: $ask', ({ challenge, held_s }) => {
  expect(marksOf(challenge, held_s).filter(({ passed }) => !passed)).toEqual([]);
});
