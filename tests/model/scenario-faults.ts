import {
  parseScenario,
  ScenarioError,
  simulateScenario,
  type Result,
  type Scenario,
  type ScenarioInput
} from '../../src/lib/model';
import { baitOf } from '../../src/lib/model/bait';
import { bottomOf } from '../../src/lib/model/bottom';
import { TICK_S } from '../../src/lib/model/move';
import { tipPathOf } from '../../src/lib/model/tip-path';
import { waterAt } from '../../src/lib/model/water';
import { energyBalance, type EnergyBalance } from './energy';
import type { WrongScenario } from './wrong-scenario';

/** What is wrong with what comes of one scenario: nothing, one hopes. `refused` where it has no start. */
export interface Found {
  faults: string[];
  refused?: string;
}

/** Longest that a run may take of this process's own time, s. */
const LONGEST_S = 5;
/**
 * Energy out of nothing that the book-keeping itself leaves open, as a share of what went through: work is
 * the mean of two ends of each step, and where line comes taut within one the pull has no such mean.
 */
const BOOKED_SHARE = 1e-3;
/**
 * What usual steps may lend, as the same share: they do not follow the waves that run along a line as it comes
 * taut (a piece's takes 0.1 to 0.5 ms), and the scheme gives some of their energy back later. A hundredth is
 * what the solver promises of a travel.
 */
const LENT_SHARE = 1e-2;
/** Steps so many times finer (10 µs) follow those waves: if a force made energy, it would be made there too. */
const FINER = 128;

export function faultsOf(input: ScenarioInput): Found {
  const scenario = parseScenario(input);
  const before_s = process.cpuUsage().user / 1e6;
  let result: Result;
  try {
    result = simulateScenario(scenario);
  } catch (error) {
    if (error instanceof ScenarioError) return { faults: [], refused: error.message };
    throw error;
  }
  const took_s = process.cpuUsage().user / 1e6 - before_s;
  const faults = [...notFinite(result), ...underBottom(scenario, result), ...madeEnergy(input)];
  if (took_s > LONGEST_S) faults.push(`took ${took_s.toFixed(1)} s`);
  if (JSON.stringify(simulateScenario(scenario)) !== JSON.stringify(result))
    faults.push('comes out otherwise when it is run again');
  return { faults: [...faults, ...unlikeMirror(scenario)] };
}

function notFinite({ trace, ...summary }: Result): string[] {
  const numbers = [
    ...Object.entries(trace),
    ['summary', Object.values(summary).filter((one) => typeof one === 'number')]
  ] as [string, number[]][];
  return numbers
    .filter(([, values]) => !values.every(Number.isFinite))
    .map(([name]) => `${name} holds what is no number`);
}

/** The lowest point of a round bait may lie beside a flank that its side touches, by its width at most. */
function underBottom(scenario: Scenario, { trace }: Result): string[] {
  const { radius_m } = baitOf(scenario, waterAt(scenario.water.temperature_C));
  const bottom = bottomOf(scenario, radius_m);
  const least_m = bottom.isFlat ? 1e-9 : 2 * radius_m;
  const deepest_m = Math.max(
    ...trace.bait_x_m.map((x, i) => bottom.heightAt(x) - trace.bait_z_m[i])
  );
  return deepest_m > least_m ? [`bait ${deepest_m.toFixed(4)} m under the bottom`] : [];
}

/** No more than a hundredth at usual steps, and no more than is open by the book where steps follow all that moves. */
function madeEnergy(input: ScenarioInput): string[] {
  const usual = energyBalance(input);
  if (usual.made_J <= BOOKED_SHARE * usual.throughput_J) return [];
  const fine = energyBalance(input, FINER);
  return [...overBook(usual, LENT_SHARE, 'usual'), ...overBook(fine, BOOKED_SHARE, 'finest')];
}

function overBook({ made_J, throughput_J }: EnergyBalance, share: number, steps: string): string[] {
  const open_J = share * throughput_J;
  return made_J > open_J
    ? [`${steps} steps made ${1000 * made_J} mJ of nothing, ${1000 * open_J} open`]
    : [];
}

/** How far apart a run and its image to the left may be where stones are: their library has no mirror. */
const STONE_MIRROR = { share: 0.02, by_m: 0.01 };

/**
 * The world has one mirror: left for right. Rod angles are of a hand that looks right, so both sides are
 * given the path of the tip.
 */
function unlikeMirror(scenario: Scenario): string[] {
  const right = { ...scenario, move: tipPathMove(scenario) };
  if (right.move === null) return [];
  const move = { ...right.move, x_m: right.move.x_m.map((x) => -x) };
  const { start, bottom } = scenario;
  const left = {
    ...scenario,
    move,
    start: { ...start, bait_x_m: -start.bait_x_m },
    bottom: {
      ...bottom,
      stones: bottom.stones.map((stone) => ({ ...stone, x_m: -stone.x_m })),
      ...(bottom.profile && {
        profile: {
          x_m: bottom.profile.x_m.map((x) => -x).reverse(),
          z_m: [...bottom.profile.z_m].reverse()
        }
      })
    }
  };
  try {
    const [a, b] = [simulateScenario(right as Scenario), simulateScenario(left)];
    const by_m = Math.abs(a.travel_m - b.travel_m);
    const isFlat = !bottom.profile && bottom.stones.length === 0 && !bottom.ground;
    const isAlike = isFlat
      ? a.trace.bait_x_m.every((x, i) => x === -b.trace.bait_x_m[i])
      : by_m <= Math.max(STONE_MIRROR.by_m, STONE_MIRROR.share * Math.abs(a.travel_m));
    return isAlike ? [] : [`its mirror image travels ${a.travel_m} and ${b.travel_m} m`];
  } catch (error) {
    if (error instanceof ScenarioError) return [];
    throw error;
  }
}

/** The tip's path as points, the boat's drift left to the scenario; null where the reel is part of the move. */
function tipPathMove(scenario: Scenario) {
  const path = tipPathOf({ ...scenario, drift_m_s: 0 }, scenario.move);
  if (path.lineIn_m(path.duration_s) !== 0) return null;
  const steps = Math.max(2, Math.round(path.duration_s / (5 * TICK_S)));
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const t = (i / steps) * path.duration_s;
    const out = { x: 0, z: 0 };
    path.at(t, out);
    return { t, ...out };
  });
  return {
    kind: 'tip_path' as const,
    t_s: points.map(({ t }) => t),
    x_m: points.map(({ x }) => x),
    z_m: points.map(({ z }) => z)
  };
}

/** What the refusal of a faulty scenario leaves to wish: field and value are named, and nothing else is. */
export function faultsOfRefusal({ path, value, scenario }: WrongScenario): string[] {
  try {
    parseScenario(scenario);
  } catch (error) {
    if (!(error instanceof ScenarioError)) return [`${path}: ${String(error)}`];
    if (error.path !== path) return [`${path}: named ${error.path}`];
    if (!error.message.startsWith(path)) return [`${path}: not in “${error.message}”`];
    if (JSON.stringify(error.value) !== JSON.stringify(value))
      return [`${path}: value ${JSON.stringify(error.value)}, not ${JSON.stringify(value)}`];
    return [];
  }
  return [`${path}: ${JSON.stringify(value)} was taken`];
}
