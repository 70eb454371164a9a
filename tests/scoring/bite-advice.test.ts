import { expect, test } from 'vitest';
import { findChallenge, isBlank, loadLessons, nthTry } from '../../src/lib/course';
import { held, inTurn, lift, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import type { Move } from '../../src/lib/model';
import { describeTry, gradeTry, type Challenge } from '../../src/lib/scoring';

const lessons = loadLessons();
const named = (id: string) => findChallenge(id, lessons) as Challenge;
const blankOf = (id: string) =>
  [1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => nthTry(named(id), n)).find(isBlank) as Challenge;

function told(challenge: Challenge, move: Move) {
  const graded = gradeTry(challenge, move);
  const { did, why, change } = describeTry(challenge, graded, 'imperial', null);
  const plain = (words: string) => words.replaceAll('\u00a0', ' ');
  return { did: plain(did), why: plain(why), change: plain(change) };
}

const drag = sweep(40, 50, 3);
const still = sweep(60, 60, 0.1);

test.each([
  ['strike-a-tap', inTurn(drag, pause(9)), 'When it taps, sweep firmly right away.'],
  [
    'strike-a-lost-weight',
    inTurn(drag, pause(12)),
    'When the weight goes, reel down until you feel it, then sweep.'
  ],
  [
    'reel-down-and-sweep',
    inTurn(still, pause(9)),
    'When it taps, reel down until you feel it, then sweep.'
  ],
  [
    'taken-on-the-drop',
    inTurn(held(30), pause(12)),
    'When the line runs off, reel down until you feel it, then set.'
  ],
  [
    'bite-on-semi-slack',
    inTurn(lift(30, 45, 1), lift(45, 38, 1), pause(12)),
    'When the line runs off, reel down until you feel it, then set.'
  ]
])('who misses the bite is told the set of that task: %s', (id, move, words) => {
  const { did, change } = told(named(id), move);
  expect(did).toBe('It bit, and you never set.');
  expect(change).toBe(words);
});

test.each([
  [
    'strike-a-tap',
    inTurn(drag, pause(4.5), sweep(50, 76, 0.6)),
    'Sweep sooner: within 2 s of the bite.'
  ],
  [
    'reel-down-and-sweep',
    inTurn(still, pause(6.5), reel(0.4, 0.6), sweep(60, 84, 0.6)),
    'Reel down and sweep sooner: within 3 s of the bite.'
  ]
])('who sets late is told to set sooner: %s', (id, move, words) => {
  expect(told(named(id), move).change).toBe(words);
});

test('a late set goes before a drag that was short', () => {
  const short = inTurn(sweep(40, 46, 3), pause(4.5), sweep(46, 76, 0.6));
  const { why, change } = told(named('strike-a-tap'), short);
  expect(why).toMatch(/^You moved it \d in before the bite, not 6 in\.$/);
  expect(change).toMatch(/^Sweep sooner/);
});

test.each([
  ['strike-a-tap', 'Felt nothing? Don’t set.'],
  ['strike-a-lost-weight', 'Weight still there? Don’t set.'],
  ['bite-on-semi-slack', 'Line not running off? Don’t set.']
])(
  'who sets on nothing is told by what to know that, where nothing is the bite, too: %s',
  (id, words) => {
    const cast = blankOf(id);
    const isLift = cast.plane === 'lift';
    const first = isLift ? [lift(30, 45, 1), lift(45, 38, 1)] : [drag];
    const set = isLift ? lift(38, 85, 0.6) : sweep(50, 76, 0.6);
    expect(told(cast, inTurn(...first, pause(8), set)).change).toBe(words);
  }
);

test('who leaves before the bite without a move is told to stay, and not to set', () => {
  const { did, change } = told(named('reel-down-and-sweep'), inTurn(still, pause(0.5)));
  expect(did).toMatch(/^You left too soon/);
  expect(change).toBe('Stay with it longer.');
});

test.each(['strike-a-tap', 'reel-down-and-sweep'])(
  'who reels the jig off before the bite is told of the reel: %s',
  (id) => {
    const { plane, start } = named(id);
    expect(plane).toBe('sweep');
    const hold = sweep(start.azimuth_deg, start.azimuth_deg, 0.1);
    const { did, why, change } = told(named(id), inTurn(hold, reel(2.4, 2.9), pause(9)));
    expect(did).toMatch(
      /^The reel brought the jig [4-8] ft.* (before anything bit|while you waited)\.$/
    );
    expect(why).toBe('');
    expect(change).toBe('Leave the reel alone until it bites.');
  }
);

test.each(['one-hop', 'stroke', 'hop-seen-0-1'])('who only reels has made no hop: %s', (id) => {
  const hop = findChallenge(id, lessons) as Challenge;
  const { elevation_deg } = hop.start;
  const { did, why, change } = told(hop, inTurn(held(elevation_deg), reel(1.1, 1)));
  expect(did).toMatch(/^The reel moved the jig [23] ft.*: no hop\.$/);
  expect(why).toBe('');
  expect(change).toBe('Leave the reel alone: the rod moves the jig.');
});

test('who reels on the drop is told that it stops the fall', () => {
  const { did, change } = told(
    named('count-it-down'),
    inTurn(held(45), pause(1), reel(1.6, 2), pause(8))
  );
  expect(did).toBe('You reeled in 5 ft 3 in, and never lowered the rod.');
  expect(change).toBe('Leave the reel alone: it stops the fall.');
});

test('who pulls too slowly to set after the bite is not told that there was no set', () => {
  const slow = inTurn(still, pause(3.4), sweep(60, 84, 2));
  const { did, change } = told(named('reel-down-and-sweep'), slow);
  expect(did).toBe('It bit, and your pull was too slow to set.');
  expect(change).toBe('When it taps, reel down until you feel it, then sweep.');
});
