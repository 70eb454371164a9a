import { expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { inTurn, lift, pause, sweep } from '../../src/lib/course/retrieves/moves';
import type { Move } from '../../src/lib/model';
import { describeTry, gradeTry, solveCorrection, type Challenge } from '../../src/lib/scoring';

function told(id: string, move: Move) {
  const task = findChallenge(id, allLessons()) as Challenge;
  const even = byHand(move, task.start, { reach: 0, pace: 0, isEven: true });
  const graded = gradeTry(task, even);
  const { did, why, change } = describeTry(task, graded, 'imperial', solveCorrection(task));
  return { did, why, change: change.replaceAll('\u00a0', ' ') };
}

const lowered = (to_deg: number, time_s: number) =>
  inTurn(lift(30, 18, 0.5), pause(0.5), lift(18, to_deg, time_s));

test.each([
  ['soft-rod-hop', lowered(30, 1)],
  ['soft-rod-hop', lowered(30, 0.3)],
  ['soft-rod-hop', lowered(26, 0.5)],
  ['soft-rod-hop', lowered(30.5, 0.3)],
  ['one-hop', lowered(30, 1)],
  ['three-hops-even', lowered(30, 1)]
])('who lowers the rod first and only brings it back is told that: %s %#', (id, move) => {
  expect(told(id, move).change).toMatch(
    /^You lowered the rod first, and that made slack\. Snap the tip up 1 ft 2 in/
  );
});

const forward = (to_deg: number) => inTurn(sweep(60, 48, 1.5), pause(0.5), sweep(48, to_deg, 1));

test.each(['through-the-slack', 'wind-comes-up', 'two-feet-unseen', 'reel-takes-slack'])(
  'who swings the rod forward first is not told that it swung back: %s',
  (id) => {
    for (const to_deg of [60, 65])
      expect(told(id, forward(to_deg)).change).toMatch(
        /^You swung the tip forward first, and that made slack\. Move the tip /
      );
  }
);

test('who only lowers the rod, or pulls nothing, is told to pull away from the jig', () => {
  const only = told('soft-rod-hop', inTurn(lift(30, 18, 0.5), pause(0.5)));
  expect(only.change).toMatch(/^Pull away from the jig: hold Raise, not Lower\./);
});

test('who lowers the rod a little and then hops the jig has hopped it', () => {
  const hop = inTurn(lift(30, 18, 0.5), pause(0.5), lift(18, 42, 0.3), lift(42, 31, 0.5));
  expect(told('soft-rod-hop', hop)).toMatchObject({ change: '' });
});

test('slack takes no more than the pull: nothing of a way that is counted both ways', () => {
  expect(told('through-the-slack', forward(60)).did).toContain('counting both ways');
  expect(told('through-the-slack', forward(60)).why).not.toContain('Slack took');
});

test('a slow lift that is taken back is told as far as it was pulled', () => {
  const { change } = told('through-the-slack', inTurn(sweep(60, 66, 1), sweep(66, 60.5, 1)));
  expect(change).not.toMatch(/\b0 in\b/);
});
