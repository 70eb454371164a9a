import { describe, expect, test } from 'vitest';
import { figureLevel, figureOfReply, rulerOf } from '../../src/lib/practice';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { figureOf, type Challenge } from '../../src/lib/scoring';
import { adviceWords, errorWords, fewWords } from '../../src/lib/app/homework/advice';
import { tied } from '../tied';

const lessons = loadLessons();
const figureAt = (id: string) => figureOf(findChallenge(id, lessons) as Challenge);
/** About 0.3 m, give or take 5 cm. */
const oneFoot = figureAt('exactly-one-foot');
/** 8 to 20 cm high. */
const hop = figureAt('one-hop');
const count = figureAt('count-it-down');
const rest = figureAt('dead-stick');
/** Five or more. */
const twitches = figureAt('shake-in-place');
/** Has no figure of its own: its marks. */
const snag = figureAt('free-a-snag');

describe('a hand at a task', () => {
  test('has the level that its ruler has, in the unit of the figure', () => {
    const travels = [0.42, 0.5, 0.46, 0.44, 0.49];
    const marks = travels.map((bait_m, i) => {
      const at = `2031-05-01T08:00:0${i}.000Z`;
      const tip = { tip_m: 0.4, lift_m: 0, speed_m_s: 0.2, isPaceRight: true };
      return { id: `${i}`, challenge: 'one', at, meant_m: 0.3048, bait_m, ...tip };
    });
    const ruler = rulerOf(marks);
    expect(figureLevel(oneFoot, travels)?.value).toBeCloseTo((ruler?.bait.value ?? 0) * 0.3048, 9);
  });

  test('says nothing of fewer tries than a ruler takes', () => {
    expect(figureLevel(oneFoot, [0.3, 0.4, 0.5])).toBeNull();
  });

  test.each([
    ['far too far', oneFoot, [0.58, 0.6, 0.62, 0.6], 'lower', 'Aim 1~ft shorter than feels right.'],
    ['too low', hop, [0.05, 0.06, 0.05, 0.06], 'raise', 'Aim 1~in higher.'],
    [
      'too early',
      count,
      [-1, -1.2, -0.9, -1.1],
      'raise',
      'Wait 1.1~s longer: it was still falling.'
    ],
    ['too short', rest, [6, 6.2, 5.9, 6], 'raise', 'Let it lie 6~s longer.'],
    ['uneven', oneFoot, [0.02, 0.9, 0.1, 0.8, 0.05, 0.7], 'steady', /^The hand is uneven/],
    ['few', oneFoot, [0, 1.2, 0.08, 0.9], 'unclear', /^Too few/],
    ['in the band', hop, [0.13, 0.14, 0.15, 0.14], 'harder', /^In the band/],
    ['at the end of the band', twitches, [5, 5, 5, 5, 5], 'harder', /^In the band/],
    ['a hair over', hop, [0.2001, 0.2001, 0.2001, 0.2001], 'lower', 'Hardly anything to change.']
  ])('%s is told so in its own figure', (_, figure, values, advice, words) => {
    const level = figureLevel(figure, values);
    expect(level?.advice).toBe(advice);
    const said = level && adviceWords(figure, level, 'imperial');
    if (typeof words === 'string') expect(said).toBe(tied(words));
    else expect(said).toMatch(words);
  });

  test.each([
    [oneFoot, [0.6, 0.6, 0.6, 0.6], '1~ft too far on average, give or take 0~in'],
    [hop, [0.05, 0.05, 0.05, 0.05], '1~in too low on average, give or take 0~in'],
    // As each try says it: from the end of the range, which is when it touched bottom.
    [count, [4, 4, 4, 4], '1.5~s too late on average, give or take 0~s'],
    [count, [-2.5, -2.5, -2.5, -2.5], '2.5~s too early on average, give or take 0~s'],
    // Longer than the middle of the band, and within it: nothing is wrong with it.
    [oneFoot, [0.33, 0.33, 0.33, 0.33], '1~ft~1~in on average, give or take 0~in'],
    // At the very end of the range, and inside it.
    [twitches, [5, 5, 5, 5, 5], '5 on target: tries differ by 0'],
    [hop, [0.2001, 0.2001, 0.2001, 0.2001], 'a hair too high on average, give or take 0~in'],
    [snag, [60, 61, 60, 61], 'not passed on average: 61~marks, give or take 1~mark']
  ])('an even one is put into words by its average', (figure, values, words) => {
    const level = figureLevel(figure, values);
    expect(level && errorWords(figure, level, 'imperial')).toBe(tied(words));
  });
});

test('tries too few for an average are told one by one', () => {
  expect(fewWords(oneFoot, [0.41, 0.38], 'imperial')).toBe(
    tied('1~ft~4~in (4~in too far) and 1~ft~3~in (3~in too far)')
  );
  // Of the lengths that are told, so that the reader's sum comes out.
  expect(fewWords(oneFoot, [0.367, 0.24], 'imperial')).toBe(
    tied('1~ft~2½~in (2½~in too far) and 9~in (3~in too short)')
  );
  expect(fewWords(count, [7.2, 1, 3], 'imperial')).toBe(
    tied('7.2~s (4.7~s too late), 1~s and 3~s (0.5~s too late)')
  );
  expect(fewWords(hop, [0.1], 'imperial')).toBe(tied('4~in'));
  // What rounds to nothing is no "0 too high".
  expect(fewWords(hop, [0.2001], 'imperial')).toBe(tied('8~in (a hair too high)'));
  expect(fewWords(snag, [100, 0], 'imperial')).toBe(tied('100~marks and 0~marks (not passed)'));
});

test('a reply of before says the figure of a distance, and of no other task', () => {
  const old = { travel_m: 0.4, marks: 55 };
  expect(figureOfReply(oneFoot, old)).toBe(0.4);
  expect(figureOfReply(hop, old)).toBeNull();
  expect(figureOfReply(hop, { ...old, figure: 0.12 })).toBe(0.12);
});
