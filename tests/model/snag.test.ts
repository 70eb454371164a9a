import { expect, test } from 'vitest';
import { simulate, type Move, type ScenarioInput } from '../../src/lib/model';

/** A stone dragged against, and let go of by three shakes from slack. */
const CRACK: Omit<ScenarioInput, 'move'> = {
  water: { depth_m: 2.7 },
  line: { material: 'fluorocarbon', diameter_m: 0.0003, breaking_load_N: 60 },
  bait: { mass_kg: 0.0142 },
  bottom: { snags: true, stones: [{ x_m: 9.7, width_m: 0.2, height_m: 0.25 }] },
  start: { bait_x_m: 10, slack_m: 0.03 },
  hold_s: 2
};
const turn = (from_deg: number, to_deg: number, duration_s: number) =>
  ({ kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg: 0 }) as const;
const SHAKE = [{ kind: 'pause', duration_s: 0.7 }, turn(50, 71, 0.4), turn(71, 50, 0.4)] as const;
const moves = [turn(60, 80, 1), turn(80, 50, 1), ...SHAKE, ...SHAKE, ...SHAKE];
const move = { kind: 'sequence', moves } as unknown as Move;

const told = (segments: number, step_s?: number) => {
  const { events, travel_m } = simulate({ ...CRACK, move, numerics: { segments, step_s } });
  return { events: events.filter(({ kind }) => kind === 'snag' || kind === 'freed'), travel_m };
};

const usual = told(40);

test('a hook takes and is shaken free', () => {
  expect(usual.events.map(({ kind }) => kind)).toEqual(['snag', 'freed']);
});

test.each([
  [20, undefined],
  [80, undefined],
  [160, undefined],
  [40, 1e-3]
])('a hook takes or passes alike with %s pieces of line, in steps of %s s', (segments, step_s) => {
  const other = told(segments, step_s);
  expect(other.events.map(({ kind }) => kind)).toEqual(['snag', 'freed']);
  other.events.forEach(({ t_s }, i) => {
    // Two ticks, and what 20 pieces differ from 40 in when the line comes tight.
    expect(Math.abs(t_s - usual.events[i].t_s)).toBeLessThan(0.04);
  });
  // Where the stone holds the bait is geometry: the same to less than a millimetre.
  expect(Math.abs(other.travel_m - usual.travel_m)).toBeLessThan(1e-3);
});
