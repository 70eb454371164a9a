import { expect, test } from 'vitest';
import { sampled, TAKES_ALL } from './samples';

const TEN = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

test('a few are the first, the last and some evenly between; all where all are to be taken', () => {
  expect(sampled(TEN, 4)).toEqual(TAKES_ALL ? TEN : [1, 4, 7, 10]);
});

test('what once failed is always among them, in its place', () => {
  expect(sampled(TEN, 2, [6])).toEqual(TAKES_ALL ? TEN : [1, 6, 10]);
});

test('of fewer than are asked for all are taken', () => {
  expect(sampled([1, 2], 3)).toEqual([1, 2]);
});
