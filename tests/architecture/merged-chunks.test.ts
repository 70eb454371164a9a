import { expect, test } from 'vitest';
import { mergedChunks } from '../../scripts/merged-chunks.mjs';

/** A part that a page loads: its module, its size, what it imports by its place, and for which pages it is there. */
const part = (id: string, size: number, to: number[], ...by: string[]) => ({
  ids: [id],
  size,
  to,
  by: new Set(by)
});

const sorted = (groups: string[][]) => groups.map((ids) => [...ids].sort().join()).sort();

test('what the same pages load is one chunk, however large', () => {
  const parts = [part('a', 30_000, [1], 'home', 'try'), part('b', 200, [], 'home', 'try')];
  expect(sorted(mergedChunks(parts))).toEqual(['a,b']);
});

test('a page is not made to load much for the sake of another', () => {
  const parts = [part('a', 30_000, [], 'home'), part('b', 20_000, [], 'home', 'try')];
  expect(sorted(mergedChunks(parts))).toEqual(['a', 'b']);
});

test('the little that one of many pages has no use for is no reason for a file of its own', () => {
  const pages = ['home', 'try', 'quiz', 'plan'];
  const parts = [part('a', 100, [], ...pages), part('b', 9000, [], ...pages, 'log')];
  expect(sorted(mergedChunks(parts))).toEqual(['a,b']);
});

test('what a part imports counts with it', () => {
  const pages = ['home', 'try', 'quiz', 'plan'];
  const parts = [
    part('a', 100, [2], ...pages),
    part('b', 100, [], ...pages, 'log'),
    part('large', 30_000, [], ...pages)
  ];
  expect(sorted(mergedChunks(parts))).toEqual(['a,large', 'b']);
});

test('two that reach each other by a third stay two, or become one with it', () => {
  const parts = [
    part('top', 100, [1], 'home', 'try'),
    part('middle', 50_000, [2], 'home', 'try', 'quiz'),
    part('bottom', 100, [], 'home', 'try', 'quiz', 'plan')
  ];
  const groups = sorted(mergedChunks(parts));
  expect(groups.every((ids) => ids !== 'bottom,top')).toBe(true);
});

test('no page has more than a little that it has no use for, all in all', () => {
  const others = ['try', 'quiz', 'plan'];
  const parts = Array.from({ length: 60 }, (_, i) =>
    part(`of-others-${i}`, 300, [], ...others, `only-${i}`)
  );
  parts.push(part('of-all', 300, [], ...others, 'home', ...parts.map((_, i) => `only-${i}`)));
  const groups = mergedChunks(parts);
  const withHome = groups.find((ids) => ids.includes('of-all')) ?? [];
  expect((withHome.length - 1) * 300).toBeLessThanOrEqual(4000);
});
