import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { parseSetup } from '../../src/lib/model';
import { drawnOf } from '../../src/lib/scoring';
import { showsHang } from '../../src/lib/sandbox/draw/hang';

const lesson = allLessons().find(({ id }) => id === 'snags');
if (!lesson) throw new Error('no lesson on snags');

test('hung and free stand in the picture of every demonstration and every task about a snag', () => {
  const demos = lesson.sections.flatMap((one) => (one.kind === 'see' ? one.demos : []));
  const shown = demos.map(({ run }) => showsHang({ target: null, setup: parseSetup(run.setup) }));
  expect(shown).toEqual([true, true]);
  for (const { goals, setup } of lesson.challenges)
    expect(showsHang({ target: drawnOf(goals), setup: parseSetup(setup) })).toBe(true);
});

test('and in none of water without them, nor where a task asks for something else', () => {
  const others = allLessons().flatMap(({ challenges }) => challenges);
  const isAsked = ({ goals }: (typeof others)[number]) =>
    goals.some(({ kind }) => kind === 'freed');
  for (const { goals, setup } of others.filter((one) => !isAsked(one)))
    expect(showsHang({ target: drawnOf(goals), setup: parseSetup(setup) })).toBe(false);
});
