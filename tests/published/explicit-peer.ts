import { cylinderDragCoefficient, type Scenario } from '../../src/lib/model';
import { lineProperties, submergedFraction } from '../../src/lib/model/scenario';
import { startOf } from '../../src/lib/model/start';
import { tipPathOf } from '../../src/lib/model/tip-path';
import { waterAt } from '../../src/lib/model/water';

/**
 * The same physics by the plainest means: explicit semi-implicit Euler steps of 20 µs, drag taken
 * piece by piece, the bottom as a stiff damped spring with regularised friction. It shares with the
 * model the scenario, the starting shape and the tip's path, and no line of the solver.
 */
const STEP_S = 2e-5;
const BOTTOM_N_M = 4e3;
const BOTTOM_N_S_M = 18;
const SLIP_M_S = 3e-4;
const G = 9.80665;

export interface PeerResult {
  travel_m: number;
  peak_height_m: number;
  peak_tip_tension_N: number;
}

export function simulateExplicitly(scenario: Scenario): PeerResult {
  const { move, hold_s, ...setup } = scenario;
  const path = tipPathOf(setup, move);
  const water = waterAt(setup.water.temperature_C);
  const line = lineProperties(setup.line);
  const n = setup.numerics.segments;
  const tip = { x: 0, z: 0 };
  path.at(0, tip);
  const start = startOf(setup, tip);
  const bedZ = -setup.water.depth_m;
  const l = start.solver.pieceLength_m;
  const x = start.solver.state.x.slice();
  const z = start.solver.state.z.slice();
  const vx = new Float64Array(n + 1);
  const vz = new Float64Array(n + 1);
  const fx = new Float64Array(n + 1);
  const fz = new Float64Array(n + 1);

  const d = line.diameter_m;
  const area = (Math.PI / 4) * d * d;
  const EA = line.youngs_modulus_Pa * area;
  const pieceMass = line.density_kg_m3 * area * l;
  const { mass_kg, drag_area_m2, added_mass_fraction } = setup.bait;
  const kept = submergedFraction(setup);
  const baitMass = mass_kg * (1 + added_mass_fraction * (1 - kept)) + pieceMass / 2;
  const reynolds = (water.density_kg_m3 * d) / water.viscosity_Pa_s;
  const startX = x[n];
  let peakTension = 0;
  let peakHeight = 0;

  const steps = Math.round((path.duration_s + hold_s) / STEP_S);
  for (let step = 1; step <= steps; step++) {
    fx.fill(0);
    fz.fill(0);
    let tipTension = 0;
    for (let i = 0; i < n; i++) {
      const dx = x[i + 1] - x[i];
      const dz = z[i + 1] - z[i];
      const length = Math.sqrt(dx * dx + dz * dz);
      const tx = dx / length;
      const tz = dz / length;
      const tension = Math.max(0, EA * (length / l - 1));
      if (i === 0) tipTension = tension;
      const low = Math.min(z[i], z[i + 1]);
      const high = Math.max(z[i], z[i + 1]);
      const wet = high <= 0 ? 1 : low >= 0 ? 0 : -low / (high - low);
      const weight = (line.density_kg_m3 - wet * water.density_kg_m3) * area * G * l;
      const mx = 0.5 * (vx[i] + vx[i + 1]);
      const mz = 0.5 * (vz[i] + vz[i + 1]);
      const along = mx * tx + mz * tz;
      const acrossX = mx - along * tx;
      const acrossZ = mz - along * tz;
      const across = Math.sqrt(acrossX * acrossX + acrossZ * acrossZ);
      const cd =
        line.normal_drag === 'reynolds'
          ? cylinderDragCoefficient(Math.max(across * reynolds, 0.1))
          : line.normal_drag;
      const half = 0.5 * water.density_kg_m3 * d * l * wet;
      const normal = half * cd * across;
      const skin = half * Math.PI * line.tangential_drag * Math.abs(along) * along;
      const hx = 0.5 * (normal * acrossX + skin * tx);
      const hz = 0.5 * (normal * acrossZ + skin * tz + weight);
      fx[i] += tension * tx - hx;
      fz[i] += tension * tz - hz;
      fx[i + 1] -= tension * tx + hx;
      fz[i + 1] -= tension * tz + hz;
    }
    const speed = Math.hypot(vx[n], vz[n]);
    const drag = 0.5 * water.density_kg_m3 * drag_area_m2 * speed;
    fx[n] -= drag * vx[n];
    fz[n] -= drag * vz[n] + kept * mass_kg * G;
    const sunk = bedZ - z[n];
    if (sunk > 0) {
      const support = Math.max(0, BOTTOM_N_M * sunk - BOTTOM_N_S_M * vz[n]);
      fz[n] += support;
      fx[n] -= (setup.bottom.friction * support * vx[n]) / Math.max(Math.abs(vx[n]), SLIP_M_S);
    }
    for (let i = 1; i <= n; i++) {
      const mass = i === n ? baitMass : pieceMass;
      vx[i] += (fx[i] / mass) * STEP_S;
      vz[i] += (fz[i] / mass) * STEP_S;
      x[i] += vx[i] * STEP_S;
      z[i] += vz[i] * STEP_S;
      if (i < n && z[i] < bedZ) {
        z[i] = bedZ;
        vz[i] = Math.max(vz[i], 0);
      }
    }
    path.at(step * STEP_S, tip);
    vx[0] = (tip.x - x[0]) / STEP_S;
    vz[0] = (tip.z - z[0]) / STEP_S;
    x[0] = tip.x;
    z[0] = tip.z;
    peakTension = Math.max(peakTension, tipTension);
    peakHeight = Math.max(peakHeight, z[n] - bedZ);
  }
  return {
    travel_m: startX - x[n],
    peak_height_m: peakHeight,
    peak_tip_tension_N: peakTension
  };
}
