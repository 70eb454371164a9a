import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { held, inTurn, lift, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import { parseSetup, type Move } from '../../src/lib/model';
import {
  describeTry,
  formatSpeed,
  gradeTry,
  KEY_SPEEDS_M_S,
  type Challenge
} from '../../src/lib/scoring';

const lessons = loadLessons();
const named = (id: string) => findChallenge(id, lessons) as Challenge;

function told(id: string, move: Move) {
  const graded = gradeTry(named(id), move);
  const { did, why, change } = describeTry(named(id), graded, 'imperial', null);
  const plain = (words: string) => words.replaceAll('\u00a0', ' ');
  return { did: plain(did), why: plain(why), change: plain(change), grade: graded.grade };
}

test('who lifted far too little is not told to lift a little more', () => {
  const { did, change } = told('stroke', inTurn(lift(15, 30, 0.3), pause(0.3), lift(30, 15, 1)));
  expect(did).toMatch(/^It rose only \d+ in; at least 2 ft was asked\.$/);
  expect(change).toMatch(/^Lift farther and harder\. Lift the tip 7 ft/);
});

test('a rise asked for once is told as that, be it a hop, a stroke or a slow lift', () => {
  const { did } = told('stroke', inTurn(lift(15, 75, 0.45), pause(2)));
  expect(did).toMatch(/^It rose \d ft \d+ in; 2 ft to 5 ft was asked\.$/);
});

test.each(['one-hop', 'stroke', 'hop-seen-0-1'])(
  'the way down is told once, with the jig: %s',
  (id) => {
    const { reference } = named(id);
    if (reference.kind !== 'sequence') throw new Error(reference.kind);
    const { change } = told(id, inTurn(reference.moves[0], pause(2)));
    expect(change).toMatch(/^After the lift, lower the tip with the jig, to [^.]+\.$/);
  }
);

test('the dial’s quickest pace is within what a hop may take', () => {
  const { goals, setup, start } = named('one-hop');
  const limit = goals.find((goal) => goal.kind === 'tip_speed');
  const top_m_s = Math.max(...KEY_SPEEDS_M_S);
  expect(limit?.most_m_s).toBeGreaterThan(top_m_s);
  expect(formatSpeed(limit?.most_m_s ?? 0, 'imperial')).not.toBe(formatSpeed(top_m_s, 'imperial'));
  const turn_deg = 10;
  const time_s = ((turn_deg * Math.PI) / 180) * (parseSetup(setup).rod.length_m / top_m_s);
  const up = lift(start.elevation_deg, start.elevation_deg + turn_deg, time_s);
  const evenly = byHand(up, start, { reach: 0, pace: 0, isEven: true });
  const { grade } = gradeTry(named('one-hop'), evenly);
  expect(grade.goals.find(({ goal }) => goal.kind === 'tip_speed')?.met).toBe(1);
});

test('who makes all the hops without a rest is told to let it lie, and not how many', () => {
  const hops = [lift(30, 42, 0.25), pause(0.9), lift(42, 53, 0.25), pause(0.9), lift(53, 63, 0.25)];
  const { did, change } = told('three-hops-even', inTurn(...hops));
  expect(did).toMatch(/^Hopped 3 times/);
  expect(change).toBe('Let it lie longer between your moves. Count to 3.');
});

test('a swim that dragged is told to be lifted and reeled faster, one that sank to be reeled faster', () => {
  const plowed = told('swim-at-a-height', inTurn(lift(20, 24, 1), reel(2, 5)));
  expect(plowed.did).toBe('It dragged along the bottom.');
  expect(plowed.change).toBe('Lift it off bottom first, then reel faster.');
  const sunk = told('swim-at-a-height', inTurn(lift(20, 75, 0.7), pause(3), reel(3, 10)));
  expect(sunk.change).toBe('Reel faster: it sank back to the bottom.');
});

test('a rod dropped ahead of the fall is told as that, with the way to follow it', () => {
  const { why, change } = told(
    'fall-on-a-following-rod',
    inTurn(held(70), lift(70, 0, 0.6), pause(6))
  );
  expect(why).toBe('The rod dropped ahead of it, and left slack.');
  expect(change).toBe('Lower the tip with the jig, to 9 o’clock, in 4 s.');
});

test('a count that was long, or never ended, is one order', () => {
  const late = told('count-it-down', inTurn(held(45), pause(12), lift(45, 20, 1)));
  expect(late.change).toBe('Lower the rod sooner: count to 6.');
  const never = told('count-it-down', inTurn(held(45), pause(12)));
  expect(never.change).toBe('Lower the rod once it’s down: count to 6.');
});

const hung = [sweep(60, 80, 1), pause(0.5)];

test('who gave slack to a hung jig is told to shake it, who did not to give slack, who leaned on it to stop', () => {
  const slack = told('free-a-snag', inTurn(...hung, sweep(80, 55, 1), pause(2)));
  expect(slack.did).toBe('The jig still hangs.');
  expect(slack.change).toBe('The slack is right: now shake it, three small pulls that come tight.');
  const tight = told('free-a-snag', inTurn(...hung, pause(2)));
  expect(tight.change).toBe('Once it hangs, give it slack: rod toward the jig.');
  const raised = told('free-from-above', inTurn(lift(0, 22, 0.7), pause(4)));
  expect(raised.change).toBe('Once it hangs, give it slack: rod down.');
  const leaned = told('free-a-snag', named('free-a-snag').beginner);
  expect(leaned.change).toBe('Stop as soon as it hangs: the pull wedged it.');
});
