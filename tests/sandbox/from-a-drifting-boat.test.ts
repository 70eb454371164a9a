import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { inTurn, pause, sweep } from '../../src/lib/course/retrieves/moves';
import { parseSetup, recordScenario } from '../../src/lib/model';
import { tryMarkOf } from '../../src/lib/practice';
import { trySummaryOf } from '../../src/lib/sandbox/events';
import { filmOf } from '../../src/lib/sandbox/film';
import { readoutOf } from '../../src/lib/sandbox/readout';
import { Showing } from '../../src/lib/sandbox/showing.svelte';
import { stageOf } from '../../src/lib/sandbox/stage';
import { describeTry, drawnOf, formatLength, gradeTry } from '../../src/lib/scoring';

function taskOf(id: string) {
  const challenge = findChallenge(id, loadLessons());
  if (!challenge) throw new Error(`no challenge ${id}`);
  const { plane, start, goals } = challenge;
  const setup = parseSetup(challenge.setup);
  const stage = stageOf({
    setup,
    plane,
    start,
    units: 'imperial',
    target: drawnOf(goals),
    ghosts: []
  });
  return { challenge, setup, stage };
}

test.each(['drifting-away', 'drifting-onto'])(
  'the tip’s way is one figure in %s: beside the rod, in the replay, in words and on the ruler',
  (id) => {
    const { challenge, setup, stage } = taskOf(id);
    const { hold_s, reference: move } = challenge;
    const run = recordScenario({ ...setup, move, hold_s });
    const shown = new Showing(filmOf(run), stage);
    shown.player.seek(shown.player.ends_s);
    const tip_m = readoutOf(run.result.trace, stage, 0).tip_m;
    const told = formatLength(tip_m, 'imperial');
    expect(formatLength(shown.readout.tip_m, 'imperial')).toBe(told);
    expect(trySummaryOf(run, 'imperial')).toContain(`The tip went ${told},`);
    const graded = gradeTry(challenge, move);
    expect(tryMarkOf(challenge, graded)?.tip_m).toBeCloseTo(tip_m, 6);
    const failed = gradeTry(challenge, challenge.beginner);
    const { trace } = failed.result;
    const missed = formatLength(readoutOf(trace, stage, 0).tip_m, 'imperial');
    expect(describeTry(challenge, failed, 'imperial').did).toContain(
      `You moved the tip ${missed} and`
    );
  }
);

test('a rod that nobody touched has not moved its tip, however far the boat drifts', () => {
  const { challenge, setup, stage } = taskOf('drifting-onto');
  const { elevation_deg, azimuth_deg } = challenge.start;
  const rest = { from_deg: azimuth_deg, to_deg: azimuth_deg, duration_s: 20 };
  const move = { kind: 'sweep', elevation_deg, ...rest } as const;
  const { result } = recordScenario({ ...setup, move, hold_s: 1 });
  const { tip_m, tip_s } = readoutOf(result.trace, stage, 0);
  expect(formatLength(tip_m, 'metric')).toMatch(/^0\scm$/);
  expect(tip_s).toBe(0);
});

test.each([
  ['drifting-away', 8],
  ['drifting-onto', 3]
])('%s: beside a rod that was turned for 3 s and rests for 5 the seconds are %d', (id, told_s) => {
  const { challenge, setup, stage } = taskOf(id);
  const { azimuth_deg } = challenge.start;
  const move = inTurn(sweep(azimuth_deg, azimuth_deg + 10, 3), pause(5));
  const { trace } = recordScenario({ ...setup, move, hold_s: 0 }).result;
  expect(Math.abs(readoutOf(trace, stage, 0).tip_s - told_s)).toBeLessThan(0.8);
});
