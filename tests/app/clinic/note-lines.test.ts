import { expect, test } from 'vitest';
import { noteLines } from '../../../src/lib/app/clinic/note-lines';

const of = (asked: number, hands: number, drills: number) =>
  ({ asked: Array(asked), hands: Array(hands), drills: Array(drills) }) as Parameters<
    typeof noteLines
  >[0];

test('the more a sheet says, the fewer lines it has for notes, and none that would begin another', () => {
  expect(noteLines(of(2, 1, 2), 'summary')).toBe(7);
  expect(noteLines(of(4, 3, 2), 'summary')).toBe(0);
  expect(noteLines(of(4, 3, 2), 'handout')).toBe(4);
  expect(noteLines(of(1, 1, 4), 'handout')).toBe(0);
});
