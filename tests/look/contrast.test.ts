import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast } from './contrast';

const css = readFileSync('src/styles/tokens.css', 'utf8');
const pattern = /--([\w-]+):\s*light-dark\((#[0-9a-f]{6}),\s*(#[0-9a-f]{6})\)/g;
const found = [...css.matchAll(pattern)].map(([, name, day, night]) => ({ name, day, night }));
const schemes = {
  day: Object.fromEntries(found.map(({ name, day }) => [name, day])),
  night: Object.fromEntries(found.map(({ name, night }) => [name, night]))
};

test('contrast is 21 for black on white and 1 for a colour on itself', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#123456', '#123456')).toBe(1);
  // The W3C's own worked value for the least grey on white, G18.
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

const grounds = ['paper', 'raised', 'water', 'deep'];

// WCAG 2.2 SC 1.4.3 asks 4.5 of text, SC 1.4.11 asks 3 of what controls and pictures are read by.
const demands = [
  ...['ink', 'ink-soft', 'reed', 'lead', 'silt', 'bait'].flatMap((name) =>
    grounds.map((ground) => ({ name, ground, least: name === 'bait' ? 3 : 4.5 }))
  ),
  { name: 'bait', ground: 'paper', least: 4.5 },
  { name: 'bait', ground: 'raised', least: 4.5 },
  { name: 'ink', ground: 'bed', least: 4.5 },
  // The main button is lettered in paper on ink.
  { name: 'paper', ground: 'ink', least: 4.5 }
];

describe.each(['day', 'night'] as const)('by %s', (scheme) => {
  test.each(demands)('$name on $ground has a contrast of $least', ({ name, ground, least }) => {
    const colours = schemes[scheme];
    expect(contrast(colours[name], colours[ground])).toBeGreaterThanOrEqual(least);
  });
});

test('each registered colour starts as its day value', () => {
  const registered = [...css.matchAll(/@property --([\w-]+)[^}]*initial-value:\s*(#[0-9a-f]{6})/g)];
  expect(Object.fromEntries(registered.map(([, name, value]) => [name, value]))).toEqual(
    schemes.day
  );
});

test('nothing in the styles of ours but the bait is drawn in the bait’s colour', () => {
  for (const sheet of ['base', 'controls', 'print', 'fonts']) {
    expect(readFileSync(`src/styles/${sheet}.css`, 'utf8')).not.toContain('--bait');
  }
});
