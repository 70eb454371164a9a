import { parseScenario, type ScenarioInput } from '../../src/lib/model';
import { rodBendOf, startOf } from '../../src/lib/model/start';
import { BED_STIFFNESS_N_M2 } from '../../src/lib/model/line-forces';
import { LineState } from '../../src/lib/model/line-state';
import { wetShare } from '../../src/lib/model/line';
import { tipPathOf } from '../../src/lib/model/tip-path';

/** Steps as a run takes them where much happens (run.ts): shorter where one changes a speed by more. */
const STEP_S = 0.00125;
const SNAP_M_S = 5;
const FINEST_SHARE = 1 / 16;

/** Energy that a run got and what of it was taken, J. */
export interface EnergyBalance {
  /** Work of hand and weights, all of it counted as positive. */
  throughput_J: number;
  /** The most by which the energy dissipated so far ever got less: what the scheme made of nothing. */
  made_J: number;
}

/**
 * Of line, bait, bottom and hand alone, without wind, bites, stems and reel: what hand and weights have
 * put in, less what moves, what is stretched and what the bed gives, has been dissipated, and that only grows. The
 * work of weights and hand is the mean of their forces at both ends of a step times the way in it; what the hand
 * gives through the damping of a rod's bend is the damper's force in the step, by the tip's speed in it.
 * Steps are as usual, or so many times finer. Booked until a bait is snatched out of the water: weight and drag change there at a knife's edge.
 */
export function energyBalance(input: ScenarioInput, finer = 1): EnergyBalance {
  const longest_s = STEP_S / finer;
  const { move, hold_s, ...setup } = parseScenario({ ...input, bites: [], wind_m_s: 0 });
  const path = tipPathOf(setup, move);
  const tip = { x: 0, z: 0 };
  path.at(0, tip);
  const { solver, line, bait, bottom } = startOf(setup, tip);
  const { state } = solver;
  const { x, z, vx, vz } = state;
  const n = state.nodes - 1;
  const piece = solver.pieceLength_m;
  const bend = rodBendOf(setup);
  const isBending = bend !== null;
  const spring = bend?.stiffness_N_m ?? 0;
  const damping = bend?.damping_N_s_m ?? 0;

  /** Force of the hand on what moves: on the line's first node, or on the rod's spring. */
  const handForce = () => {
    if (isBending) return { x: spring * (tip.x - x[0]), z: spring * (tip.z - z[0]) };
    const length = Math.hypot(x[1] - x[0], z[1] - z[0]);
    const pull = solver.tensionNow(0) / length;
    return { x: -pull * (x[1] - x[0]), z: -pull * (z[1] - z[0]) };
  };
  const weights = new Float64Array(n + 1);
  const weigh = (out: Float64Array) => {
    out.fill(0);
    for (let i = 0; i < n; i++) {
      const inWater = line.weightInWater_N_m[i];
      const dry = 1 - wetShare(z[i], z[i + 1]);
      const half = 0.5 * piece * (inWater + dry * (line.weightInAir_N_m[i] - inWater));
      out[i] += half;
      out[i + 1] += half;
    }
    out[n] += z[n] >= 0 ? bait.weightInAir_N : bait.weightInWater_N;
  };
  const stored = () => {
    let sum = 0;
    for (let i = 0; i <= n; i++) {
      const neighbours =
        (i > 0 ? line.massPerLength_kg_m[i - 1] : 0) + (i < n ? line.massPerLength_kg_m[i] : 0);
      const mass = 0.5 * piece * neighbours + (i === n ? bait.movingMass_kg : 0);
      if (i > 0 || isBending) sum += 0.5 * mass * (vx[i] ** 2 + vz[i] ** 2);
      if (i < n) sum += (0.5 * solver.tensionNow(i) ** 2 * piece) / line.axialStiffness_N[i];
    }
    const end = { x: x[n], z: z[n] };
    for (let i = 1; i < n; i++) {
      const depth = z[i] < bottom.highest_m ? bottom.evenedBedAt(x[i], end) - z[i] : 0;
      if (depth > 0) sum += 0.5 * BED_STIFFNESS_N_M2 * piece * depth * depth;
    }
    if (isBending) sum += 0.5 * spring * ((tip.x - x[0]) ** 2 + (tip.z - z[0]) ** 2);
    return sum;
  };

  weigh(weights);
  const later = new Float64Array(n + 1);
  let force = handForce();
  const start = stored();
  const from = { ...tip };
  const before = Float64Array.from(z);
  let [work, throughput_J, most, made_J] = [0, 0, 0, 0];
  const end_s = path.duration_s + Math.min(hold_s, 3);
  const saved = new LineState(state.nodes);
  for (let [t_s, step_s] = [0, longest_s]; t_s < end_s;) {
    saved.copyFrom(state);
    path.at(t_s + step_s, tip);
    solver.step(step_s, tip);
    if (solver.lastChange_m_s > SNAP_M_S && step_s > FINEST_SHARE * longest_s) {
      state.copyFrom(saved);
      step_s /= 2;
      continue;
    }
    if (z[n] >= 0) break;
    const now = handForce();
    const [dx, dz] = [tip.x - from.x, tip.z - from.z];
    const byDamper = damping * ((dx / step_s - vx[0]) * dx + (dz / step_s - vz[0]) * dz);
    const byHand = 0.5 * ((force.x + now.x) * dx + (force.z + now.z) * dz) + byDamper;
    t_s += step_s;
    step_s = Math.min(2 * step_s, longest_s);
    weigh(later);
    let byWeight = 0;
    for (let i = isBending ? 0 : 1; i <= n; i++) {
      byWeight -= 0.5 * (weights[i] + later[i]) * (z[i] - before[i]);
    }
    work += byHand + byWeight;
    throughput_J += Math.abs(byHand) + Math.abs(byWeight);
    const dissipated = work - (stored() - start);
    most = Math.max(most, dissipated);
    made_J = Math.max(made_J, most - dissipated);
    force = now;
    Object.assign(from, tip);
    before.set(z);
    weights.set(later);
  }
  return { throughput_J, made_J };
}
