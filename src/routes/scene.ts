import {
  parseScenario,
  Run,
  TICK_S,
  tipPathOf,
  type Move,
  type Result,
  type SetupInput
} from '$lib/model';

/** Rod and line as points [m towards the boat, m down from the surface], from the hand to the bait. */
export type Rig = readonly (readonly [right_m: number, down_m: number])[];

/** One move from the model, to be drawn to scale: the boat on the right, as in the practice water. */
export interface Scene {
  before: Rig;
  after: Rig;
  /** The bottom under the bait, m down. */
  depth_m: number;
  pivotHeight_m: number;
  result: Result;
}

/** Runs the move and keeps how rod and line lay before it and after it. Throws ScenarioError. */
export function sceneOf(input: { setup: SetupInput; move: Move; hold_s: number }): Scene {
  const { move, hold_s, ...setup } = parseScenario({
    ...input.setup,
    move: input.move,
    hold_s: input.hold_s
  });
  const path = tipPathOf(setup, move);
  const run = new Run(setup, path);
  const pivotHeight_m = setup.rod.pivot_height_m;
  const rig = (): Rig => [
    [0, -pivotHeight_m],
    ...Array.from(run.nodes.x, (x, i) => [-x, -run.nodes.z[i]] as const)
  ];
  const before = rig();
  while (run.time_s < path.duration_s + hold_s - 0.5 * TICK_S) run.tick();
  return {
    before,
    after: rig(),
    depth_m: setup.water.depth_m,
    pivotHeight_m,
    result: run.result()
  };
}

/** The points as an SVG path. */
export function pathOf(rig: Rig): string {
  return rig.map(([x, y], i) => `${i ? 'L' : 'M'}${x.toFixed(3)} ${y.toFixed(3)}`).join('');
}
