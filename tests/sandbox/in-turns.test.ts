import { describe, expect, it } from 'vitest';
import { LiveRun, parseSetup, type Setup } from '../../src/lib/model';
import { inTurns } from '../../src/lib/sandbox/in-turns';
import { allLessons } from '../../src/lib/course';

const START = { elevation_deg: 12.345678, azimuth_deg: 20.5 };

/** Each kind of start that lessons have. */
function setups(): Setup[] {
  const all = allLessons().flatMap(({ challenges }) =>
    challenges.map(({ setup }) => parseSetup(setup))
  );
  const byKind = new Map(
    all.map((one) => [JSON.stringify([one.start.line, one.start.spool]), one])
  );
  return [...byKind.values()];
}

describe('A line laid in pieces', () => {
  it('is the one laid at once, to the last bit, and moves as it does', async () => {
    const kinds = setups();
    expect(kinds.length).toBeGreaterThan(1);
    for (const setup of kinds) {
      const atOnce = new LiveRun(setup, START);
      const inPieces = await inTurns(LiveRun.laidInPieces(setup, START), () => true);
      if (!inPieces) throw new Error('Nobody stopped it.');
      for (let i = 1; i <= 50; i++)
        for (const run of [atOnce, inPieces])
          run.push({ elevation_deg: 12.3 + i / 10, azimuth_deg: 20.5 });
      expect(inPieces.finish(1)).toEqual(atOnce.finish(1));
    }
  });

  it('is left where it is once nobody wants it', async () => {
    let turns = 0;
    const done: number[] = [];
    function* work(): Generator<void, string> {
      for (let i = 0; i < 5; i++) yield void done.push(i);
      return 'done';
    }
    expect(await inTurns(work(), () => ++turns <= 2)).toBeNull();
    expect(done).toEqual([0, 1]);
    expect(await inTurns(work(), () => true)).toBe('done');
  });
});
