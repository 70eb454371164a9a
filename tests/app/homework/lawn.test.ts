import { describe, expect, test } from 'vitest';
import { keepTyped, readDrags, typedBefore } from '../../../src/lib/app/homework/lawn-draft';
import { handRows, lawnWords, setText } from '../../../src/lib/app/homework/lawn-report';
import { handsStrip } from '../../../src/lib/app/homework/hands-strip';
import { lawnHandOf, rulerOf } from '../../../src/lib/practice';

const FOOT_M = 0.3048;
const at = '2031-05-01T08:00:00.000Z';
const typed = ['12', '14', '11,5', '13', '12', '15', '12', '13.5', '12', '14'];

/** Noise round it, so that the band is none of a perfect hand. */
const movedBy = (ratio: number) =>
  [-0.1, 0.05, 0.12, -0.06, 0.02, 0.08, -0.11, 0.04, -0.05, 0.01].map(
    (off) => (ratio + off) * FOOT_M
  );
const hand = (ratio: number) => lawnHandOf(FOOT_M, [{ moved_m: movedBy(ratio), at }])!;
const ruler = (ratio: number) =>
  rulerOf(
    movedBy(ratio).map((bait_m, i) => ({
      ...{
        id: `${i}`,
        at: at.replace('08:00', `08:1${i}`),
        challenge: 'x',
        bait_m,
        meant_m: FOOT_M
      },
      ...{ tip_m: bait_m, lift_m: 0, speed_m_s: 0.2, isPaceRight: true }
    }))
  );

describe('numbers from a tape', () => {
  test('are read in the learner’s unit, with a point or a comma', () => {
    const read = readDrags(typed, 'imperial');
    if (!('moved_m' in read)) throw new Error(read.fault);
    expect(read.moved_m[0]).toBeCloseTo(0.3048, 6);
    expect(read.moved_m[2]).toBeCloseTo(11.5 * 0.0254, 6);
  });

  test.each([
    ['', 'Drag 3 is still open.'],
    ['a foot', 'Drag 3: “a foot” is not a number.'],
    ['-4', 'Drag 3: -4 is not from 0 to 590 in.'],
    ['1200', 'Drag 3: 1200 is not from 0 to 590 in.']
  ])('“%s” is refused, naming the drag', (text, fault) => {
    expect(readDrags(typed.with(2, text), 'imperial')).toEqual({ fault, at: 2 });
  });

  test('are there again after the page was left, for that homework alone', () => {
    const kept = new Map<string, string>();
    const shelf = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text)
    };
    keepTyped(shelf, 'Before Saturday', typed);
    expect(typedBefore(shelf, 'Before Saturday')).toEqual(typed);
    expect(typedBefore(shelf, 'Another')).toEqual(Array(10).fill(''));
    kept.set('feltfoot-lawn', '{"name":"Before Saturday","typed":[1]}');
    expect(typedBefore(shelf, 'Before Saturday')).toEqual(Array(10).fill(''));
  });
});

describe('a real rod beside the screen', () => {
  test('says how far it goes, and whether the two hands differ', () => {
    expect(lawnWords(FOOT_M, hand(1.5), null, 'imperial')).toMatch(
      /^Means 1\sft, moves it 1\sft\s6\sin, give or take .*\.$/
    );
    expect(lawnWords(FOOT_M, hand(1.5), ruler(1), 'imperial')).toMatch(
      /6\sin farther than on the screen/
    );
    expect(lawnWords(FOOT_M, hand(1.02), ruler(1), 'imperial')).toMatch(
      /About the same as on the screen/
    );
  });

  test('stand on one axis, what was meant marked, every move a dot', () => {
    const strip = handsStrip(handRows(hand(1.5), ruler(1)), 360);
    expect(strip.rows.map(({ name, dots }) => [name, dots.length])).toEqual([
      ['Real rod', 10],
      ['On the screen', 10]
    ]);
    const [real, screen] = strip.rows;
    expect(real.value).toBeGreaterThan(screen.value);
    expect(Math.abs(screen.value - strip.meant)).toBeLessThan(real.value - strip.meant);
    expect(strip.ticks.find(({ label }) => label === 'as meant')?.x).toBeCloseTo(strip.meant, 6);
  });

  test('a set reads as it was typed', () => {
    const moved_m = [0.3048, 0.3556];
    expect(setText({ moved_m, at }, 'imperial')).toBe('12, 14 in');
  });
});
