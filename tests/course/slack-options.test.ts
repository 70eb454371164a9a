import { expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';
import { inUnits } from '../../src/lib/scoring';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');
const QUARTERS: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75 };

/** "3½ ft", "1 ft 4 in", "9 in", in inches. */
function inchesIn(text: string): number {
  const [, feet = '0', part = ''] = /(\d+)([¼½¾]?) ft/.exec(text) ?? [];
  const [, inches = '0'] = /(\d+) in\b/.exec(text) ?? [];
  return 12 * (Number(feet) + (QUARTERS[part] ?? 0)) + Number(inches);
}

/** Options are said to a quarter of a foot, under a foot to the inch. */
const HALF_A_STEP_IN = 1.5;

test.each(SEEDS)('who takes the slack off the tip’s move finds what is left, seed %i', (seed) => {
  const { ask, answer } = itemOf('bait-way-of-slow-drag', seed);
  const { options, key } = answer as ChooseAnswer;
  const words = read(ask);
  const [, slack = ''] = /\. ?([^.]*) of slack hangs/.exec(words) ?? [];
  const [, tip = ''] = /its tip goes (.*?) in \d/.exec(words) ?? [];
  const left = inchesIn(tip) - inchesIn(slack);
  const right = options.find(({ id }) => id === key)?.says ?? '';
  const off = Math.abs(inchesIn(read(right)) - left);
  expect(off, `${words} ${read(right)}`).toBeLessThanOrEqual(left < 12 ? 0 : HALF_A_STEP_IN);
});

test.each(SEEDS)('the tip’s own way is offered, or the slack taken off twice, seed %i', (seed) => {
  const { ask, answer } = itemOf('bait-way-of-slow-drag', seed);
  const { options, key } = answer as ChooseAnswer;
  const words = read(ask);
  const slack = inchesIn(/\. ?([^.]*) of slack hangs/.exec(words)?.[1] ?? '');
  const tip = inchesIn(/its tip goes (.*?) in \d/.exec(words)?.[1] ?? '');
  const wrong = options.filter(({ id }) => id !== key).map(({ says }) => inchesIn(read(says)));
  // Beside a right one that is the longest there is no place for the tip’s way, which is longer still.
  const isLongest = wrong.every((one) => one < tip - slack);
  expect(wrong, words).toContain(isLongest ? tip - 2 * slack : tip);
  // No jig comes farther than the tip: two such answers would leave one to pick.
  expect(wrong.filter((one) => one > tip).length, words).toBeLessThanOrEqual(1);
});
