import { baitOf, type Bait } from './bait';
import { bottomOf, type Bottom } from './bottom';
import { lineAtRest } from './line-at-rest';
import { lineOf, type Line } from './line';
import { LineSolver, type RodBend } from './line-solver';
import { LineState } from './line-state';
import { chordOf, straightBetween, type Laid } from './laid';
import { tautLength } from './over-bed';
import { lineThatHolds, restOnBottom } from './pulled-in';
import type { Laying } from './relax';
import { LEFT_WHERE_PUT_M, settled } from './rest';
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

/** A bait that has just met the water is this far under it, m. */
const SPLASH_Z_M = -0.02;

/** A line shorter than this from tip to bait has no direction, m. */
const SHORTEST_CHORD_M = 0.05;

export interface Start {
  readonly line: Line;
  readonly bait: Bait;
  readonly bottom: Bottom;
  readonly solver: LineSolver;
  /** How far the resting line drew the bait towards the angler before it lay still, m. */
  readonly drawnIn_m: number;
}

/** Lays the line from `tip` to the bait as the setup says. Throws ScenarioError. */
export function startOf(setup: Setup, tip: Point): Start {
  const laying = layingOf(setup, tip);
  for (;;) {
    const { done, value } = laying.next();
    if (done) return value;
  }
}

/** The same in pieces: between them a page may see to whoever touches it. */
export function* layingOf(setup: Setup, tip: Point): Generator<void, Start> {
  const water = waterAt(setup.water.temperature_C);
  const bait = baitOf(setup, water);
  const bottom = bottomOf(setup, bait.radius_m);
  const { bait_x_m, slack_m = 0 } = setup.start;
  const isSplash = setup.start.line === 'splash';
  const place = isSplash ? { x: bait_x_m, z: SPLASH_Z_M } : restOnBottom(bottom, bait_x_m);
  if (chordOf(tip, place) < SHORTEST_CHORD_M) {
    throw new ScenarioError('start.bait_x_m', bait_x_m, 'puts the bait at the tip of the rod');
  }
  const line = lineOf(setup, water, chordOf(tip, place) + slack_m);
  const rod = rodBendOf(setup);
  const wind_m_s = setup.wind_m_s * Math.sign(bait_x_m);
  const laying = { line, bottom, rod, tip, wind_m_s };
  const laid = layLine(setup, laying, bait, place);
  yield;
  const state = LineState.atRest(laid, tip);
  state.isTouching = !isSplash;
  const solver = new LineSolver(state, line, bait, bottom, rod, laid.pieceLength_m, wind_m_s);
  if (setup.start.line === 'equilibrium') yield* bringToRest(setup, solver, tip);
  const drawnIn_m = Math.sign(bait_x_m) * (bait_x_m - state.x[state.nodes - 1]);
  const isWherePut = Math.abs(drawnIn_m) < LEFT_WHERE_PUT_M;
  return { line, bait, bottom, solver, drawnIn_m: isWherePut ? 0 : drawnIn_m };
}

/** Held first, so that a line still finding its shape draws nothing along; then let go. */
function* bringToRest(setup: Setup, solver: LineSolver, tip: Point): Generator<void> {
  const isHeldAtRest = settled(solver, tip, true);
  yield;
  if (isHeldAtRest && settled(solver, tip, false)) return;
  const reason = 'line and bait do not come to rest: give less slack, less wind or gentler ground';
  throw new ScenarioError('start', setup.start, reason);
}

function layLine(setup: Setup, laying: Laying, bait: Bait, place: Point): Laid {
  const { start } = setup;
  const { line, tip } = laying;
  const chord = chordOf(tip, place);
  switch (start.line) {
    case 'straight': {
      const stretch = 1 + (start.pretension_N ?? 0) / line.axialStiffness_N[0];
      return straightBetween(line, tip, place, chord / stretch);
    }
    case 'splash':
      return straightBetween(line, tip, place, chord + (start.slack_m ?? 0));
    case 'equilibrium': {
      const { slack_m = DEFAULT_SLACK_M, horizontal_tension_N } = start;
      const length =
        horizontal_tension_N === undefined
          ? { unstretched_m: tautLength(laying.bottom, tip, place) + slack_m }
          : { horizontal_tension_N };
      return lineThatHolds(laying, bait, place, lineAtRest(laying, place, length));
    }
  }
}

export function rodBendOf({ rod }: Setup): RodBend {
  const stiffness_N_m = rod.tip_stiffness_N_per_m;
  if (stiffness_N_m === null) return null;
  const critical = 2 * Math.sqrt(stiffness_N_m * TIP_MASS_KG);
  return {
    stiffness_N_m,
    damping_N_s_m: rod.tip_damping_N_s_per_m ?? TIP_DAMPING_RATIO * critical
  };
}
