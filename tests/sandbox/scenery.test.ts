import { describe, expect, test } from 'vitest';
import { LiveRun, simulate, TICK_S, type GroundKind, type Trace } from '../../src/lib/model';
import { Stems } from '../../src/lib/model/stems';
import { Scenery } from '../../src/lib/sandbox/scenery/scenery';
import { LINKS, returnTime, sinkSpeed, STRANDS } from '../../src/lib/sandbox/scenery/strands';
import { stageOf } from '../../src/lib/sandbox/stage';
import { gradeRun, parseChallenge } from '../../src/lib/scoring';
import { smallWater } from './waters';

const start = { elevation_deg: 0, azimuth_deg: 0 };
const move = { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 2.5, elevation_deg: 0 } as const;
const waterOver = (kind: GroundKind) => smallWater({ bottom: { ground: { kind, seed: 3 } } });

function stageOver(kind: GroundKind) {
  const setup = waterOver(kind);
  return stageOf({ setup, plane: 'sweep', start, units: 'metric', target: null, ghosts: [] });
}

function runOver(kind: GroundKind, isCalm = false, hold_s = 3) {
  const stage = stageOver(kind);
  const { trace } = simulate({ ...stage.setup, move, hold_s });
  return { stage, trace, scenery: new Scenery(stage, trace, isCalm) };
}

const ends = (trace: Trace) => trace.t_s[trace.t_s.length - 1];
/** What is to be seen at a moment: clouds yet to come are not. */
function seen(scenery: Scenery, t_s: number) {
  const now = scenery.at(t_s);
  return structuredClone({ ...now, puffs: now.puffs.filter((puff) => puff.t_s <= t_s) });
}

describe('scenery', () => {
  test('changes neither result nor marks, to the last bit', () => {
    const stage = stageOver('gravel');
    const [bare, adorned] = [0, 1].map(() => new LiveRun(stage.setup, start));
    const scenery = new Scenery(stage, adorned.run.record.trace, false);
    for (let i = 1; i <= 200; i++) {
      const angles = { elevation_deg: 0, azimuth_deg: 70 * (i / 200) ** 2 };
      bare.push(angles);
      adorned.push(angles);
      scenery.at(adorned.run.time_s);
    }
    const challenge = parseChallenge({
      id: 'any',
      title: 'Any',
      ask: 'Drag it.',
      setup: stage.setup,
      plane: 'sweep',
      start,
      hold_s: 1,
      goals: [{ kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 100 }],
      visibility: 'seen',
      reference: move,
      beginner: move
    });
    const results = [bare.finish(1).result, adorned.finish(1).result];
    const knocked = scenery.at(2).pebbles;
    expect(knocked.b).not.toEqual(new Scenery(stage, results[0].trace, false).at(0).pebbles.a);
    expect(results[1]).toEqual(results[0]);
    const [one, other] = results.map((result) => gradeRun(challenge, { move, result }));
    expect(other).toEqual(one);
  });

  test.each(['gravel', 'mud', 'grass'] as const)(
    'over %s is the same at a moment however it was come by',
    (kind) => {
      const { stage, trace, scenery } = runOver(kind);
      const straight = seen(scenery, 1.234);
      scenery.at(ends(trace));
      expect(seen(scenery, 1.234)).toEqual(straight);
      expect(seen(new Scenery(stage, trace, false), 1.234)).toEqual(straight);
    }
  );
});

describe('the skirt', () => {
  // ζL⁴/(12.36 EI): 0.075 × 9.15e-6 / (12.4 × 4.91e-8) for the silicone strand.
  test('bends back in the time of a cantilever’s slowest mode', () => {
    expect(returnTime(STRANDS[0])).toBeCloseTo(1.127, 2);
  });

  test('sinks if it is silicone and rises if it is the trailer’s', () => {
    expect(sinkSpeed(STRANDS[0])).toBeGreaterThan(0);
    expect(sinkSpeed(STRANDS[STRANDS.length - 1])).toBeLessThan(0);
  });

  test('keeps its links’ length while it moves clear of the bottom', () => {
    const { scenery, trace } = runOver('sand');
    const { strands } = scenery.at(ends(trace) / 4);
    const top = 2 * 5 * (LINKS + 1);
    for (let j = 0; j < LINKS; j++) {
      const at = top + 2 * j;
      const link = Math.hypot(
        strands.a[at + 2] - strands.a[at],
        strands.a[at + 3] - strands.a[at + 1]
      );
      // Kept in 32 bits.
      expect(link).toBeCloseTo(STRANDS[5].length_m / LINKS, 7);
    }
  });

  test('trails while the bait is drawn and settles when it rests', () => {
    const { scenery, trace } = runOver('sand', false, 8);
    const tip = 2 * (5 * (LINKS + 1) + LINKS);
    const fastest = trace.bait_x_m.reduce(
      (best, x, i) =>
        i > 0 && trace.bait_x_m[i - 1] - x > trace.bait_x_m[best - 1] - trace.bait_x_m[best]
          ? i
          : best,
      1
    );
    const drawn = scenery.at(trace.t_s[fastest]).strands.a[tip];
    const rests = scenery.at(0).strands.a[tip];
    expect(drawn).toBeGreaterThan(rests + 0.002);
    const [near, end] = [1, 0].map((s) => scenery.at(ends(trace) - s).strands.b[tip]);
    // Six of its return times on, e⁻⁵ of its length is left to go at most.
    expect(Math.abs(end - near)).toBeLessThan(4e-4);
  });
});

describe('clouds', () => {
  test('rise from mud and not from gravel, and none when motion is unwanted', () => {
    const puffsOver = (kind: GroundKind, isCalm = false) => {
      const { scenery, trace } = runOver(kind, isCalm);
      return scenery.at(ends(trace)).puffs.length;
    };
    expect(puffsOver('mud')).toBeGreaterThan(5);
    expect(puffsOver('gravel')).toBe(0);
    expect(puffsOver('mud', true)).toBe(0);
  });
});

describe('stems', () => {
  test('are bent as the model’s own grip bends them', () => {
    const { stage, trace, scenery } = runOver('brush');
    const model = new Stems(stage.stems, trace.bait_x_m[0]);
    const out = { force_N: 0, stiffness_N_m: 0 };
    let loaded = 0;
    for (let i = 1; i < trace.t_s.length; i++) {
      const x = trace.bait_x_m[i];
      model.follow(x, trace.bait_z_m[i] - stage.heightAt(x));
      model.forceAt(x, out);
      const { leans } = scenery.at(i * TICK_S);
      const drawn = stage.stems.reduce(
        (sum, { stiffness_N_per_m }, j) => sum + stiffness_N_per_m * leans.a[j],
        0
      );
      if (out.force_N > 0) loaded++;
      // Kept in 32 bits.
      expect(drawn).toBeCloseTo(out.force_N, 5);
    }
    expect(loaded).toBeGreaterThan(20);
  });
});
