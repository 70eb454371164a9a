import { describe, expect, test } from 'vitest';
import { INCH_M } from '../../src/lib/model';
import { findChallenge, loadLessons } from '../../src/lib/course';
import {
  adviceFor,
  advisedMove,
  describeTry,
  gradeTry,
  solveCorrection,
  tipTravel,
  type Challenge
} from '../../src/lib/scoring';
import { inTurn, lift, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import { byHand } from '../../src/lib/course/hand';
import { handRun } from '../../src/lib/scoring/hand-run';
import { isSameSteps } from '../../src/lib/scoring/same-move';

const challenge = (id: string): Challenge => {
  const found = loadLessons()
    .flatMap(({ challenges }) => challenges)
    .find((one) => one.id === id);
  if (!found) throw new Error(`there is no challenge ${id}`);
  return found;
};

function said(asked: Challenge, move: Challenge['reference']) {
  return adviceFor(asked, gradeTry(asked, move), 'imperial', null);
}

test('who hopped once of three times is told to move it three times, not to wait longer', () => {
  for (const id of ['three-hops-even', 'three-hops-uneven']) {
    const once = said(challenge(id), lift(30, 55, 0.25));
    expect(once.words, id).toMatch(/^Move it 3 times, and let it lie in between\./);
  }
});

test('who twitched too few times is told how many the next try takes, which begins at none', () => {
  const asked = challenge('shake-in-place');
  const { goals } = asked;
  const count = goals.find((goal) => goal.kind === 'twitches')?.count ?? 0;
  const twitch = [lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.6)];
  const { words } = said(asked, inTurn(...twitch, ...twitch, ...twitch));
  expect(count).toBe(5);
  expect(words).toMatch(/Twitch it 5 times, tip back down and a short rest after each/);
});

test('who drags too fast, too far or not far enough, is told both, in a drill as in a lesson', () => {
  const drill = findChallenge('drag-seen-0-1', []);
  if (!drill) throw new Error('there is no such drill');
  const { words } = said(drill, sweep(60, 84, 1.2));
  expect(words).toMatch(/^Move less, and slower\. Move the tip 1\sft\s1\sin, in 2\ss\.$/);
  expect(said(drill, sweep(60, 65, 0.3)).words).toMatch(
    /^Go farther, and slower\. Move the tip 1\sft/
  );
  // Quick alone is told as that.
  expect(said(drill, sweep(60, 69, 0.4)).words).toMatch(/^Go slower\./);
});

test('who was in time on the whole and too quick at one spot is told to pull evenly, not slower', () => {
  const steady = challenge('a-steady-pace');
  const uneven = inTurn(sweep(60, 66, 2.6), sweep(66, 81, 1.4), sweep(81, 87.5, 2.6));
  const { words, aim } = said(steady, uneven);
  expect(words).toMatch(/^Pull more evenly: one spot was too quick\. Move the tip 3\sft/);
  expect(aim).toMatch(/^Move the tip 3\sft/);
  expect(said(steady, sweep(60, 87.5, 1.6)).words).toMatch(/^Go slower\./);
  // And halfway that the way was short, before all else.
  const short = inTurn(sweep(60, 63, 2.6), sweep(63, 72, 0.8), sweep(72, 73.5, 1.6));
  expect(said(steady, short).words).toMatch(/^Go farther, and more evenly\. Move the tip 3\sft/);
});

describe('the one step that is to change is said by hours and halves, turns of the handle and whole seconds', () => {
  test.each([
    [
      'one-hop',
      /^Stop the lift sooner\. Snap the tip up 1\sft\s2\sin, to a little below 10:30 on the clock, in about ¼ second\.$/
    ],
    ['stroke', /Lift the tip 7\sft, to 11:30 on the clock, in about ½ second\.$/],
    [
      'reel-takes-slack',
      /^Reel up the slack while the jig sits still\. Hold Reel in until the next button lights\.$/
    ],
    ['count-it-down', /^Lower it, once the line stops running out: count to 6, to be sure\.$/],
    ['three-hops-sideways', /Snap the tip 1\sft\s3\sin, in about ¼ second\.$/]
  ])('%s', (id, words) => {
    expect(said(challenge(id), challenge(id).beginner).words).toMatch(words);
  });

  test('before the rod has gone forward, that is said with the reel after it', () => {
    const { words } = said(challenge('reel-takes-slack'), sweep(60, 78, 4));
    expect(words).toMatch(
      /^After the sweep, swing the tip forward 2\sft, in 2\ss, then hold Reel in until the next button lights\.$/
    );
  });
});

test('onto a jig that the boat drifts to, the reel comes before the rod, however far that went', () => {
  const asked = challenge('drifting-onto');
  const rodAlone = [sweep(60, 75, 2), sweep(60, 78, 2)].map((pull) =>
    inTurn(sweep(60, 60, 0.1), pause(5), pull)
  );
  for (const move of rodAlone) {
    const { words } = said(asked, move);
    expect(words).toMatch(/^Reel up what the boat gives, then move the rod\./);
  }
});

test('of a pull too short, after which the reel dragged the jig, it is told to go on', () => {
  const dragged = inTurn(sweep(60, 70, 2.5), sweep(70, 60, 2), reel(2.4, 3));
  const { words } = said(challenge('reel-takes-slack'), dragged);
  expect(words).toMatch(/^Keep going\. Move the tip 2\sft/);
});

test('a reel that ran away with the jig is no haste of the hand', () => {
  const dragged = inTurn(sweep(60, 80, 10), sweep(80, 60, 2), reel(1.6, 1.6));
  const { words } = said(challenge('reel-takes-slack'), dragged);
  expect(words).not.toMatch(/slower/);
});

test('of a pull too far before the reel, the pull is told first', () => {
  const far = inTurn(sweep(60, 92, 1), pause(0.5), sweep(92, 60, 1.5));
  const { words } = said(challenge('reel-takes-slack'), far);
  expect(words).toMatch(/^(Move less|Stop sooner).* Move the tip 2\sft\b/);
});

describe('a move of several steps', () => {
  const hop = challenge('one-hop');
  const advised = advisedMove(hop);

  test('is named to who did another one', () => {
    expect(said(hop, hop.beginner).move).toEqual(advised?.move);
  });

  test('is not named to who has just failed with it', () => {
    const higher: Challenge = {
      ...hop,
      goals: [{ kind: 'hops', count: 1, height_m: [2, 3], weight: 100 }]
    };
    const { move, words } = said(higher, advised?.move ?? hop.reference);
    expect({ move, words }).toEqual({ move: null, words: 'Lift farther and harder.' });
  });

  test.each(['one-hop', 'three-hops-uneven', 'lift-and-follow', 'drifting-onto'])(
    'is known again when it was made, and no other one is taken for it: %s',
    (id) => {
      const asked = challenge(id);
      const steps = advisedMove(asked)?.move ?? asked.reference;
      const made = handRun(asked, gradeTry(asked, steps).result);
      const other = handRun(asked, gradeTry(asked, asked.beginner).result);
      expect(isSameSteps(asked.setup, made, steps)).toBe(true);
      expect(isSameSteps(asked.setup, other, steps)).toBe(false);
    }
  );
});

test('where a bite decides, advice gives no count for the wait', () => {
  const { words } = said(challenge('strike-a-tap'), challenge('strike-a-tap').beginner);
  expect(words).toBe('When it taps, sweep firmly right away.');
});

test('from a boat that drifts, the tip’s way is the hand’s and not the boat’s', () => {
  const asked = challenge('drifting-away');
  const graded = gradeTry(asked, asked.reference);
  const still = gradeTry({ ...asked, setup: { ...asked.setup, drift_m_s: 0 } }, asked.reference);
  // The line's pull bends the rod alike to half an inch.
  const [hand_m, still_m] = [handRun(asked, graded.result), still.result].map(tipTravel);
  expect(Math.abs(hand_m - still_m)).toBeLessThan(INCH_M / 2);
  expect(describeTry(asked, graded, 'imperial', null).did).toMatch(
    /^You moved the tip 1\sft\s1\sin/
  );
});

test('advice names no time as a limit: a turn at an even rate that is quicker gets full marks, too', () => {
  const asked = challenge('two-feet-unseen');
  const correction = solveCorrection(asked);
  if (correction?.move.kind !== 'sweep') throw new Error('no sweep');
  const { move, duration_s } = correction;
  const hand = byHand(move, asked.start, { reach: 0, pace: 0.6, isEven: true });
  expect(hand.azimuth_deg.length / hand.rate_Hz).toBeLessThan(0.7 * duration_s);
  expect(gradeTry(asked, hand).grade.marks).toBe(100);
  const { words } = adviceFor(asked, gradeTry(asked, asked.beginner), 'imperial', correction);
  expect(words).toMatch(/slowly, in about \d\S*\ss\.$/);
});
