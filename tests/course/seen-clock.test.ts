import { expect, test } from 'vitest';
import { allLessons, type Lesson } from '../../src/lib/course';
import { parseSetup, recordScenario } from '../../src/lib/model';
import { tipSeriesOf } from '../../src/lib/sandbox/series';

type ShownRun = Extract<Lesson['sections'][number], { kind: 'see' }>['demos'][number]['run'];

interface Told {
  readonly place: string;
  readonly words: string;
  readonly run: ShownRun;
}

/** What is said of a run, and is then shown with the tip’s own clock beside it. */
const told: Told[] = allLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section): Told[] => {
    if (section.kind === 'see')
      return section.demos.map(({ caption, run }) => ({ place: id, words: caption, run }));
    if (section.kind !== 'predict') return [];
    const { ask, run } = section.question;
    return run ? [{ place: id, words: `${section.text ?? ''} ${ask}`, run }] : [];
  })
);

/** The time that words tell of the rod’s move, s: the least and the most of it; of a fall, or a count, it is another. */
function timeIn(words: string): readonly [number, number] | null {
  const told = /(?:\b(?:sweep|drag|lift|snap|of tip)\b[^.?]*?|^)\b((?:under a|\S+) seconds?)\b/i;
  const [, time] = told.exec(words) ?? [];
  if (!time) return null;
  if (time === 'under a second') return [0, 0.95];
  const count = Number(time.split(' ')[0]);
  // In words it would have to be read by who writes such a one: none is.
  return [count - 0.05, count + 0.05];
}

test('the time that is told of a move is what its picture counts', () => {
  expect(told.length).toBeGreaterThan(50);
  const timed = told.flatMap((one) => {
    // The tip of a boat that drifts goes on with it after the move.
    const time = one.run.setup.drift_m_s ? null : timeIn(one.words);
    return time ? [{ ...one, time }] : [];
  });
  expect(timed.length).toBeGreaterThan(0);
  const amiss = timed.flatMap(({ place, words, run, time: [least_s, most_s] }) => {
    const { setup, move, hold_s } = run;
    const { result } = recordScenario({ ...parseSetup(setup), move, hold_s });
    const counted_s = tipSeriesOf(result.trace).tipTime_s.at(-1) ?? 0;
    const isSo = counted_s >= least_s && counted_s <= most_s;
    return isSo ? [] : [`${place}: “${words}”, counted ${counted_s.toFixed(1)} s`];
  });
  expect(amiss).toEqual([]);
});
