import { Run, TICK_S, tipPathOf, type Move, type Result, type Setup } from '$lib/model';
import { newPose, type Pose } from './pose';
import { rodAnglesAt } from './rod-angles';
import { restsAt } from './series';

/** A run of the model with every tick kept, so that it can be shown again at any moment. */
export interface Film {
  readonly setup: Setup;
  readonly move: Move;
  /** When everything has come to rest, s: what comes after is not shown. */
  readonly ends_s: number;
  readonly result: Result;
  /** Nodes of the line, tick by tick, in 32 bits: pictures need no more. */
  readonly x: Float32Array;
  readonly z: Float32Array;
  readonly nodes: number;
  /** Line that the reel has taken in by then, m. */
  lineIn_m(t_s: number): number;
}

/**
 * Runs the model over a move and a hold of `hold_s`, as `simulate` does, and keeps the line's nodes.
 * A ten-second film takes as long as the run, some 15 ms, and 700 kB. Throws ScenarioError.
 */
export function filmOf(setup: Setup, move: Move, hold_s: number): Film {
  const path = tipPathOf(setup, move);
  const run = new Run(setup, path);
  const ticks = Math.ceil((path.duration_s + hold_s) / TICK_S - 1e-9);
  const nodes = run.nodes.x.length;
  const x = new Float32Array((ticks + 1) * nodes);
  const z = new Float32Array((ticks + 1) * nodes);
  for (let tick = 0; tick <= ticks; tick++) {
    if (tick > 0) run.tick();
    x.set(run.nodes.x, tick * nodes);
    z.set(run.nodes.z, tick * nodes);
  }
  const result = run.result();
  return {
    setup,
    move,
    ends_s: restsAt(result.trace),
    result,
    x,
    z,
    nodes,
    lineIn_m: path.lineIn_m
  };
}

/** A pose with as many nodes as the film has. */
export function poseFor(film: Film): Pose {
  return newPose(film.nodes);
}

/** The film's picture at `t_s`, between ticks too, written to `out`. */
export function showAt(film: Film, t_s: number, out: Pose): void {
  const { nodes, result } = film;
  const { trace } = result;
  const last = trace.t_s.length - 1;
  const at = Math.min(Math.max(t_s / TICK_S, 0), last);
  const tick = Math.floor(at);
  const next = Math.min(tick + 1, last);
  const share = at - tick;
  for (let i = 0; i < nodes; i++) {
    const a = tick * nodes + i;
    const b = next * nodes + i;
    out.x[i] = film.x[a] + share * (film.x[b] - film.x[a]);
    out.z[i] = film.z[a] + share * (film.z[b] - film.z[a]);
  }
  const angles = rodAnglesAt(film.setup, film.move, at * TICK_S);
  out.t_s = at * TICK_S;
  out.elevation_deg = angles.elevation_deg;
  out.azimuth_deg = angles.azimuth_deg;
  out.isTouching = trace.contact[tick] === 1;
  out.tipTension_N = trace.tip_tension_N[tick];
}
