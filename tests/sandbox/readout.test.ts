import { expect, test } from 'vitest';
import { INCH_M, type Result } from '../../src/lib/model';
import {
  goneWords,
  heightWords,
  movedWords,
  NOTHING_YET,
  readoutAt,
  readoutUntil_s,
  tipWords,
  turnsWords,
  wayWords
} from '../../src/lib/sandbox/readout';

const series = {
  t_s: [0, 1, 2, 3],
  tipTravel_m: [0, 0.2, 0.3, 1.1],
  tipOff_m: [0, 0.2, 0.3, 0.1],
  tipTime_s: [0, 0, 1, 2],
  baitTravel_m: [0, 0.1, 0.25, 0.9],
  height_m: [0, 0, 0.02, 0],
  contact: [1, 1, 0, 1] as (0 | 1)[],
  hops: [] as Result['hops']
};

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('the way that a fish takes the bait along is not counted as moved', () => {
  expect(readoutAt(series, 3, 0).bait_m).toBe(0.9);
  expect(readoutAt(series, 3, 0, 2).bait_m).toBe(0.25);
  expect(readoutAt(series, 1, 0, 2).bait_m).toBe(0.1);
});

test('after a bite the bait’s way is told as it was before, and no flight of the fish’s is its height', () => {
  expect(movedWords(readoutAt(series, 1, 0, 2))).toBe('moved');
  expect(movedWords(readoutAt(series, 3, 0, 2))).toBe('before the bite');
  const flown = { ...series, hops: [{ t_s: 2.2, duration_s: 0.5, height_m: 0.2, length_m: 0.3 }] };
  expect(readoutAt(flown, 3, 0).peak_m).toBe(0.2);
  expect(readoutAt(flown, 3, 0, 2).peak_m).toBe(0);
});

test('what the tip did goes on after the bite', () => {
  expect(readoutAt(series, 3, 0, 2).tip_m).toBe(1.1);
});

test('a bait that goes away is told so in a word, and by no sign', () => {
  const stage = { target: null, units: 'imperial' } as const;
  const said = (bait_m: number, isBitten = false) =>
    plain(`${wayWords({ bait_m }, stage)} ${movedWords({ bait_m, isBitten })}`.trim());
  expect(said(-10 * INCH_M)).toBe('10 in away');
  expect(said(-0.5 * INCH_M, true)).toBe('½ in away before the bite');
  expect(said(10 * INCH_M)).toBe('10 in moved');
  expect(said(-0.001)).toBe('0 in moved');
});

test('a tip that came back is told by both ways, and how long it took', () => {
  expect(plain(tipWords(readoutAt(series, 2, 0)))).toBe('moved, 1.0 s');
  expect(plain(tipWords(readoutAt(series, 3, 0)))).toBe('both ways, 2.0 s');
  // Nothing is counted before it moves.
  expect(plain(tipWords(NOTHING_YET))).toBe('moved');
  const back = { ...NOTHING_YET, tip_m: 0.61, tip_off_m: 0 };
  expect(plain(goneWords(back, 'imperial', false))).toBe(', tip 2 ft both ways, jig 0 in');
});

test('where a sweep at the bite is to bring the bait a way, the picture counts that way as the words do', () => {
  const bite = [{ kind: 'bite', bite: 'tap', t_s: 2 } as const];
  expect(readoutUntil_s(bite, { travel_m: [0.5, 0.7] })).toBe(Infinity);
  expect(readoutUntil_s(bite, null)).toBe(2);
  expect(readoutUntil_s(bite, { height_m: [0, 0.1] })).toBe(2);
});

test('who hears the rod hears how far tip and jig went, and what the reel took in, as it stands beside it', () => {
  const foot = { ...NOTHING_YET, tip_m: 0.305, tip_off_m: 0.305, bait_m: 0.254 };
  expect(goneWords(NOTHING_YET, 'imperial', false)).toBe('');
  expect(plain(goneWords(foot, 'imperial', false))).toBe(', tip 1 ft, jig 10 in');
  expect(plain(goneWords({ ...foot, line_in_m: 0.5 }, 'metric', false))).toBe(
    ', tip 31 cm, jig 25 cm, reel 50 cm taken in'
  );
  // Out of sight nobody is told the tip's way: that is what the hand learns.
  expect(plain(goneWords({ ...foot, line_in_m: -0.5 }, 'metric', true))).toBe(', reel 50 cm given');
});

test('two runs that end alike are told apart by how high the jig was, and a fall is no lift', () => {
  const told = (at: typeof series) => heightWords(readoutAt(at, 3, 0), 5, 'imperial');
  const hop = { t_s: 1.1, length_m: 0, height_m: 0.076, duration_s: 1.2 };
  expect(told({ ...series, hops: [hop] })).toMatch(/^on the bottom, was 3\sin up$/);
  expect(told({ ...series, contact: [1, 1, 1, 1] })).toBe('on the bottom');
  const fall = { ...hop, t_s: 0, height_m: 4 };
  expect(told({ ...series, contact: [0, 0, 1, 1], hops: [fall] })).toBe('on the bottom');
});

test('what the reel took in is told in turns of its handle, as a fix tells it', () => {
  expect([0.4, -0.8, 1.22].map((m) => plain(turnsWords(m)))).toEqual([
    '0.5 turns',
    '1.0 turns',
    '1.5 turns'
  ]);
});

test('off the bottom by less than a hop it is never “0 in up”, and skips are told once it is down', () => {
  const at = (tick: number, height_m: number) =>
    heightWords(readoutAt({ ...series, height_m: [0, 0, height_m, 0] }, tick, 0), 5, 'imperial');
  expect(at(2, 0.004)).toBe('just off the bottom');
  expect(at(2, 0.0127)).toMatch(/^½\sin up$/);
  expect(at(3, 0.004)).toBe('on the bottom, skipped');
});
