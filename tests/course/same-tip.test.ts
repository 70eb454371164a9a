import { expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import type { ShownRun } from '../../src/lib/course/lesson';
import { simulate } from '../../src/lib/model';
import { formatLength, tipTravel } from '../../src/lib/scoring';

const examples = loadLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) => (section.kind === 'see' ? [{ id, demos: section.demos }] : []))
);

/**
 * What a hand does, whatever its pace and slack: a sweep from here to there, in this water. A drifting
 * boat, a fish, another bottom or another distance move the tip in another way.
 */
function turnOf({ setup, move }: ShownRun): string | null {
  // Slack is told by its length or by how little the line pulls.
  const start = { ...setup.start, slack_m: 0, horizontal_tension_N: undefined };
  return move.kind === 'sweep'
    ? JSON.stringify([move.from_deg, move.to_deg, { ...setup, start }])
    : null;
}

/** A tip that bends over more, and back, goes a little further: that is no other sweep. */
test('two demonstrations of one sweep say one length of the tip', () => {
  const pairs = examples.flatMap(({ id, demos: [first, ...others] }) =>
    others
      .filter(({ run }) => turnOf(run) !== null && turnOf(run) === turnOf(first.run))
      .map((other) => ({ id, runs: [first.run, other.run] }))
  );
  expect(pairs.map(({ id }) => id)).toContain('one-foot');
  expect(pairs.map(({ id }) => id)).toContain('slack');
  for (const { id, runs } of pairs) {
    const [a, b] = runs.map(({ setup, move, hold_s }) =>
      formatLength(tipTravel(simulate({ ...setup, move, hold_s })), 'imperial')
    );
    expect([id, b]).toEqual([id, a]);
  }
});
