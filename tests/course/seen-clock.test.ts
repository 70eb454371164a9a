import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { parseSetup, recordScenario } from '../../src/lib/model';
import { secondsWords } from '../../src/lib/sandbox/readout';
import { tipSeriesOf } from '../../src/lib/sandbox/series';
import { tied } from '../tied';

const demos = allLessons().flatMap(({ id, sections }) =>
  sections.flatMap((section) =>
    section.kind === 'see' ? section.demos.map((demo) => ({ lesson: id, ...demo })) : []
  )
);
/** A caption that tells a time, in figures or in words. */
const timed = demos.filter(({ caption }) => /\bseconds?\b/.test(caption));

test('a run that is shown counts as many seconds as its words', () => {
  expect(demos.length).toBeGreaterThan(40);
  const shown = timed.map(({ lesson, id, caption, run }) => {
    const { setup, move, hold_s } = run;
    const { result } = recordScenario({ ...parseSetup(setup), move, hold_s });
    const clock = secondsWords(tipSeriesOf(result.trace).tipTime_s.at(-1) ?? 0);
    return `${lesson}, ${id}: “${caption}” at ${clock}`;
  });
  const said = timed.map(({ lesson, id, caption }) => {
    const count = Number(/(\d+) seconds?\b/.exec(caption)?.[1]);
    return `${lesson}, ${id}: “${caption}” at ${tied(`${count.toFixed(1)}~s`)}`;
  });
  expect(shown).toEqual(said);
});
