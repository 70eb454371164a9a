import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { markBait } from '../../src/lib/sandbox/draw/bait';
import { drawGhost } from '../../src/lib/sandbox/draw/ghost';
import { drawGoals } from '../../src/lib/sandbox/draw/goals';
import { drawTrack } from '../../src/lib/sandbox/draw/track';
import type { Ink } from '../../src/lib/sandbox/palette';
import { stageOf, type Moment } from '../../src/lib/sandbox/stage';
import type { View } from '../../src/lib/sandbox/view';
import { smallWater } from '../sandbox/waters';
import { apart, EYES, seenBy } from './colour-vision';

const css = readFileSync('src/styles/tokens.css', 'utf8');
const tokens = [...css.matchAll(/--([\w-]+):\s*light-dark\((#[0-9a-f]{6}),\s*(#[0-9a-f]{6})\)/g)];
const schemes = {
  day: Object.fromEntries(tokens.map(([, name, day]) => [name, day])),
  night: Object.fromEntries(tokens.map(([, name, , night]) => [name, night]))
};

test('the simulation leaves white white, and takes red from green for two of three eyes', () => {
  for (const eye of EYES) {
    for (const share of seenBy(eye, '#ffffff')) expect(share).toBeCloseTo(1, 4);
    // The longest way there is in L*a*b*, from black to white.
    expect(apart(eye, '#000000', '#ffffff')).toBeCloseTo(100, 1);
  }
  const redGreen = EYES.map((eye) => apart(eye, '#c04040', '#408040'));
  expect(redGreen[1]).toBeLessThan(redGreen[0] / 2);
  expect(redGreen[2]).toBeLessThan(redGreen[0] / 2);
  expect(redGreen[3]).toBeGreaterThan(redGreen[0] / 2);
});

/**
 * A difference of 20 is taken for another colour at a glance, one of 2.3 is only just seen side by side
 * (Mahy, Van Eycken and Oosterlinck 1994, from memory); for a stroke of 1.25 px on a ground, 35 (a choice).
 */
const AT_A_GLANCE = 20;
const THIN_STROKE = 35;

/** What is drawn, in which colour, on which ground. */
const STROKES = [
  { what: 'the bait', name: 'bait', grounds: ['water', 'deep', 'bed', 'raised'] },
  { what: 'the trail', name: 'ink', grounds: ['bed', 'water'] },
  { what: 'dots of a flight', name: 'ink-soft', grounds: ['water', 'deep'] },
  { what: 'ghosts', name: 'lead', grounds: ['water', 'deep'] },
  { what: 'a chart’s curves', name: 'ink', grounds: ['paper'] },
  { what: 'a chart’s bars, and its curve before', name: 'lead', grounds: ['paper'] },
  { what: 'a chart’s own pace', name: 'reed', grounds: ['paper'] },
  {
    what: 'goal bands, and the sign of what was right',
    name: 'reed',
    grounds: ['water', 'deep', 'bed', 'raised']
  }
];
/**
 * What lies side by side in a picture and is told apart by colour as well. The goals' green comes as near
 * as 7 to lead and 12 to the bait for some eyes: they are told apart by their strokes, see the last test.
 */
const SIDE_BY_SIDE = [
  ['bait', 'ink'],
  ['bait', 'lead'],
  ['ink', 'lead']
] as const;

describe.each(['day', 'night'] as const)('by %s', (scheme) => {
  const colours = schemes[scheme];
  describe.each(EYES)('an eye with %s', (eye) => {
    test.each(STROKES)('sees $what', ({ name, grounds }) => {
      // The bait is a mark of ten pixels: on the bed, by day and without any hue, it is 27 from it.
      const isMark = name === 'bait' && eye === 'achromatopsia';
      const least = isMark ? AT_A_GLANCE : THIN_STROKE;
      for (const ground of grounds) {
        const difference = apart(eye, colours[name], colours[ground]);
        expect({ ground, difference, seen: difference >= least }).toMatchObject({
          seen: true
        });
      }
    });

    // Without any hue the bait is 4 from lead and 19 from ink: by its shape alone, see the last tests.
    const told = SIDE_BY_SIDE.filter(([one]) => eye !== 'achromatopsia' || one !== 'bait');
    test.each(told)('tells %s from %s', (one, other) => {
      expect(apart(eye, colours[one], colours[other])).toBeGreaterThanOrEqual(AT_A_GLANCE);
    });
  });
});

/** Every call that leaves a mark, in order, without a word of colour. */
function strokesOf(draw: (context: CanvasRenderingContext2D) => void): Set<string> {
  const calls = new Set<string>();
  let dash = false;
  const context = new Proxy(
    {},
    {
      get:
        (_, name: string) =>
        (...args: unknown[]) => {
          if (name === 'setLineDash') dash = (args[0] as number[]).length > 0;
          if (['arc', 'clip', 'fillText'].includes(name)) calls.add(name);
          if (name === 'stroke') calls.add(dash ? 'dashed stroke' : 'stroke');
          if (name === 'fill') calls.add('fill');
        },
      set: () => true
    }
  );
  draw(context as CanvasRenderingContext2D);
  return calls;
}

test('goals, trail and ghosts are told apart by their strokes alone', () => {
  globalThis.Path2D ??= class {
    lineTo() {}
  } as unknown as typeof Path2D;
  const setup = smallWater();
  const move = { kind: 'sweep', from_deg: 0, to_deg: 40, duration_s: 3, elevation_deg: 0 } as const;
  const { trace } = simulate({ ...setup, move, hold_s: 1 });
  const stage = stageOf({
    setup,
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: 0 },
    units: 'metric',
    target: { travel_m: [0.25, 0.35], height_m: [0, 0.3] },
    ghosts: []
  });
  const view: View = { width: 300, height: 200, scale: 200, x0: 0, y0: 150 };
  const ink = {} as Ink;
  const moment = { trace, ticks: trace.t_s.length } as Moment;
  const goals = strokesOf((context) => drawGoals(context, view, stage, ink));
  const trail = strokesOf((context) => drawTrack(context, view, stage, moment, ink));
  const ghost = strokesOf((context) => drawGhost(context, view, stage, trace, 0, ink));
  // Hatched and dashed bands; a solid line; an open ring.
  expect(goals).toContain('clip');
  expect(goals).toContain('dashed stroke');
  for (const mark of ['clip', 'dashed stroke', 'arc']) expect(trail).not.toContain(mark);
  expect(ghost).toContain('arc');
  // The bait’s mark is filled, on the bottom and above it; a ghost is a ring that shows what is behind.
  const bait = strokesOf((context) => markBait(context, 9, 9, 5, false, ink));
  expect([...bait]).toEqual(['arc', 'fill', 'stroke']);
  expect([...ghost].slice(0, 2)).toEqual(['arc', 'stroke']);
  expect(ghost).not.toContain('dashed stroke');
});

test('the curves of a chart are told apart by their dashes and marks alone: none has a colour of its own', () => {
  const chart = readFileSync('src/lib/app/explore/Plot.svelte', 'utf8');
  const [, style = ''] = /<style>([\s\S]*)<\/style>/.exec(chart) ?? [];
  const rules = new Map(
    [...style.matchAll(/\.([\w.]+) \{([^}]*)\}/g)].map(([, of, is]) => [of, is])
  );
  const dashes = ['s1', 's2', 'curve.kept', 'level', 'hand'].map(
    (name) => /stroke-dasharray: ([^;]+)/.exec(rules.get(name) ?? '')?.[1]
  );
  expect(new Set(dashes).size).toBe(dashes.length);
  expect(dashes).not.toContain(undefined);
  // The first curve of all is the one without dashes.
  expect(rules.get('curve')).not.toContain('dasharray');
  for (const name of ['s1', 's2']) expect(rules.get(name)).not.toMatch(/stroke:|fill:/);
  const [, marks = ''] = /const MARKS = \[(.*)\];/.exec(chart) ?? [];
  expect(new Set(marks.split(', ')).size).toBe(3);
});
