import { LiveRun, parseSetup, type RodAngles, type SetupInput } from '$lib/model';

/** A point in metres: right towards the boat, down from the surface. */
type Point = readonly [right_m: number, down_m: number];

/** Rod, line and bait at rest, to be drawn to scale: the boat on the right, as in practice water. */
export interface Scene {
  /** The rod hand's pivot. */
  hand: Point;
  /** The line from tip to bait. */
  line: readonly Point[];
  bait: Point;
  depth_m: number;
}

/** Lays the line of this setup. Throws ScenarioError. */
export function sceneAtRest(input: SetupInput, start: RodAngles): Scene {
  const setup = parseSetup(input);
  const { x, z } = new LiveRun(setup, start).run.nodes;
  const line = Array.from(x, (at, i): Point => [-at, -z[i]]);
  return {
    hand: [0, -setup.rod.pivot_height_m],
    line,
    bait: line[line.length - 1],
    depth_m: setup.water.depth_m
  };
}

/** The points as an SVG path. */
export function pathOf(points: readonly Point[]): string {
  return points.map(([x, y], i) => `${i ? 'L' : 'M'}${x.toFixed(3)} ${y.toFixed(3)}`).join('');
}
