import { baitOf, type Bait } from './bait';
import { bottomOf, type Bottom, type Contact } from './bottom';
import { NO_LOAD } from './external-load';
import { restingLine, type LineLength } from './equilibrium';
import { lineOf, pullOf, type Line } from './line';
import { LineSolver, type RodBend } from './line-solver';
import { LineState } from './line-state';
import { chordOf, straightBetween, type Laid } from './laid';
import { overBed } from './over-bed';
import { relax } from './relax';
import { ScenarioError, type Setup } from './scenario';
import type { Point } from './tip-path';
import { waterAt } from './water';

/** Slack of a cast that nobody has measured: about what is left after reeling down, m. */
const DEFAULT_SLACK_M = 0.15;

/**
 * Share of critical damping of a rod tip, and the mass taken to swing with it, kg (both from memory:
 * carbon blanks 0.5–2 %, a few grams). Only used where a rod bends and gives no damping of its own.
 */
const TIP_DAMPING_RATIO = 0.01;
const TIP_MASS_KG = 0.004;

/**
 * A line whose nodes are pulled by less than this may start, N: one laid over steep stones has no
 * better rest to find, and what is left settles in the first moments. More than this is no start.
 */
const UNREST_LIMIT_N = 0.02;
/** A bait that has just met the water is this far under it, m. */
const SPLASH_Z_M = -0.02;
/** Rounds in which a bending rod's tip and the resting line find each other. */
const BEND_ROUNDS = 4;

export interface Start {
  readonly line: Line;
  readonly bait: Bait;
  readonly bottom: Bottom;
  readonly solver: LineSolver;
}

/** Lays the line from `tip` to the bait as the setup says. Throws ScenarioError. */
export function startOf(setup: Setup, tip: Point): Start {
  const water = waterAt(setup.water.temperature_C);
  const bait = baitOf(setup, water);
  const bottom = bottomOf(setup, bait.radius_m);
  const place =
    setup.start.line === 'splash'
      ? { x: setup.start.bait_x_m, z: SPLASH_Z_M }
      : restOnBottom(bottom, setup.start.bait_x_m);
  const line = lineOf(setup, water, chordOf(tip, place) + (setup.start.slack_m ?? 0));
  const rod = rodBendOf(setup);
  const { x_m, z_m, pieceLength_m } = layLine(setup, line, bottom, rod, tip, place);
  const state = LineState.atRest({ x_m, z_m }, tip);
  state.isTouching = setup.start.line !== 'splash';
  const solver = new LineSolver(state, line, bait, bottom, rod, pieceLength_m, windOn(setup));
  if (setup.start.line === 'equilibrium' && !bottom.isFlat) settle(solver, tip);
  return { line, bait, bottom, solver };
}

function layLine(
  setup: Setup,
  line: Line,
  bottom: Bottom,
  rod: RodBend,
  tip: Point,
  bait: Point
): Laid {
  const { start } = setup;
  switch (start.line) {
    case 'straight': {
      const stretch = 1 + (start.pretension_N ?? 0) / line.axialStiffness_N[0];
      return straightBetween(line, tip, bait, chordOf(tip, bait) / stretch);
    }
    case 'splash':
      return straightBetween(line, tip, bait, chordOf(tip, bait) + (start.slack_m ?? 0));
    case 'equilibrium':
      return bottom.isFlat || start.horizontal_tension_N !== undefined
        ? bentRodEquilibrium(setup, line, bottom, rod, tip, bait)
        : overBed(line, bottom, tip, bait, start.slack_m ?? DEFAULT_SLACK_M);
  }
}

/** How long a line laid over stones or slopes is left to sink and settle, tip and bait held, s. */
const SETTLE_S = 15;
const SETTLE_STEP_S = 0.01;

function settle(solver: LineSolver, tip: Point): void {
  const { state } = solver;
  const held = { ...NO_LOAD, isPinned: true };
  for (let t = 0; t < SETTLE_S; t += SETTLE_STEP_S) solver.step(SETTLE_STEP_S, tip, held);
  state.stop();
}

/** Wind along x. */
function windOn({ wind_m_s, start }: Setup): number {
  return wind_m_s * Math.sign(start.bait_x_m);
}

function rodBendOf({ rod }: Setup): RodBend {
  const stiffness_N_m = rod.tip_stiffness_N_per_m;
  if (stiffness_N_m === null) return null;
  const critical = 2 * Math.sqrt(stiffness_N_m * TIP_MASS_KG);
  return {
    stiffness_N_m,
    damping_N_s_m: rod.tip_damping_N_s_per_m ?? TIP_DAMPING_RATIO * critical
  };
}

/** The bait's lowest point when it just touches at `x_m`. */
function restOnBottom(bottom: Bottom, x_m: number): Point {
  const contacts: Contact[] = [];
  let z = bottom.heightAt(x_m);
  for (let round = 0; round < 20; round++) {
    bottom.contactsNear(x_m, z, contacts);
    const lift = Math.max(...contacts.map((c) => (c.nz > 0.1 ? -c.gap_m / c.nz : 0)), -1);
    if (Math.abs(lift) < 1e-7 || contacts.length === 0) break;
    z += lift;
  }
  return { x: x_m, z };
}

/** The tip of a bending rod gives a little to the line at rest; the length of line stays. */
function bentRodEquilibrium(
  setup: Setup,
  line: Line,
  bottom: Bottom,
  rod: RodBend,
  tip: Point,
  bait: Point
): Laid {
  const { slack_m = DEFAULT_SLACK_M, horizontal_tension_N } = setup.start;
  let length: LineLength =
    horizontal_tension_N === undefined
      ? { unstretched_m: chordOf(tip, bait) + slack_m }
      : { horizontal_tension_N };
  let laid = equilibrium(setup, line, bottom, tip, bait, length);
  for (let round = 0; rod && round < BEND_ROUNDS; round++) {
    length = { unstretched_m: laid.pieceLength_m * line.segments };
    const dx = laid.x_m[1] - laid.x_m[0];
    const dz = laid.z_m[1] - laid.z_m[0];
    const now = Math.hypot(dx, dz);
    const pull = pullOf(line, 0, now, laid.pieceLength_m);
    const give = pull / rod.stiffness_N_m / now;
    const bent = { x: tip.x + give * dx, z: tip.z + give * dz };
    laid = equilibrium(setup, line, bottom, bent, bait, length);
  }
  return laid;
}

function equilibrium(
  setup: Setup,
  line: Line,
  bottom: Bottom,
  tip: Point,
  bait: Point,
  length: LineLength
): Laid {
  const walked = restingLine(line, tip, bait, length);
  if (!walked && 'horizontal_tension_N' in length) {
    throw new ScenarioError(
      'start.horizontal_tension_N',
      length.horizontal_tension_N,
      'no line at rest between tip and bait has this tension'
    );
  }
  const laid =
    walked ??
    straightBetween(line, tip, bait, 'unstretched_m' in length ? length.unstretched_m : NaN);
  const wind = windOn(setup);
  if (walked && wind === 0) return laid;
  const pull = relax(laid.x_m, laid.z_m, line, bottom, laid.pieceLength_m, wind);
  if (!(pull < UNREST_LIMIT_N)) {
    throw new ScenarioError('start', setup.start, 'no line at rest was found between tip and bait');
  }
  return laid;
}
