/**
 * Drag coefficient of a long smooth circular cylinder across the flow, 0.1 ≤ Re ≤ 1e4.
 * Fit to Wieselsberger 1922, Tritton 1959 and Jayaweera & Mason 1965:
 * 11 Re^−0.75 + 0.9 (1 − e^(−1000/Re)) + 1.2 (1 − e^(−(Re/4500)^0.7)).
 */
export function cylinderDragCoefficient(reynolds: number): number {
  return (
    11 * reynolds ** -0.75 +
    0.9 * (1 - Math.exp(-1000 / reynolds)) +
    1.2 * (1 - Math.exp(-((reynolds / 4500) ** 0.7)))
  );
}

/** Below this Reynolds number the fit is extended as creeping flow: force proportional to speed. */
const CREEPING_REYNOLDS = 0.1;

/**
 * Normal drag per unit length of line divided by the normal speed, N·s/m², as a function of the
 * normal speed; tabulated, because the exact form costs four transcendental functions a node.
 */
export interface NormalDrag {
  /** Equally spaced in the square root of speed, from rest to `maxSpeed_m_s`. */
  readonly table: Float64Array;
  readonly perRootSpeed: number;
}

/** Grid of the table: 2,048 points to 40 m/s keep the error below 0.3 % from 1 mm/s up. */
const TABLE_POINTS = 2048;
const TABLE_MAX_SPEED_M_S = 40;

/** Tables made last, by what they are of: a chart runs one line forty times, and a table costs as much as a second of it. */
const TABLES_KEPT = 8;
const tablesKept = new Map<string, NormalDrag>();

/** Shared by all runs of such a line: read only. `law`: a coefficient, or that of the Reynolds number. */
export function normalDragOf(
  law: number | 'reynolds',
  diameter_m: number,
  density_kg_m3: number,
  viscosity_Pa_s: number
): NormalDrag {
  const key = [law, diameter_m, density_kg_m3, viscosity_Pa_s].join(' ');
  const kept = tablesKept.get(key);
  if (kept) return kept;
  const made = tabulateNormalDrag(law, diameter_m, density_kg_m3, viscosity_Pa_s);
  const [oldest] = tablesKept.keys();
  if (tablesKept.size === TABLES_KEPT) tablesKept.delete(oldest);
  tablesKept.set(key, made);
  return made;
}

function tabulateNormalDrag(
  law: number | 'reynolds',
  diameter_m: number,
  density_kg_m3: number,
  viscosity_Pa_s: number
): NormalDrag {
  const table = new Float64Array(TABLE_POINTS + 1);
  const rootStep = Math.sqrt(TABLE_MAX_SPEED_M_S) / TABLE_POINTS;
  const half = 0.5 * density_kg_m3 * diameter_m;
  const reynoldsPerSpeed = (density_kg_m3 * diameter_m) / viscosity_Pa_s;
  const creepingSpeed = CREEPING_REYNOLDS / reynoldsPerSpeed;
  for (let i = 0; i <= TABLE_POINTS; i++) {
    const speed = (i * rootStep) ** 2;
    if (law === 'reynolds') {
      const v = Math.max(speed, creepingSpeed);
      table[i] = half * cylinderDragCoefficient(v * reynoldsPerSpeed) * v;
    } else {
      table[i] = half * law * speed;
    }
  }
  return { table, perRootSpeed: 1 / rootStep };
}

/** Speed, m/s, at which a body's drag carries its weight in water. `dragArea_m2` is Cd·A. */
export function fallSpeed(
  submergedWeight_N: number,
  dragArea_m2: number,
  density_kg_m3: number
): number {
  return Math.sqrt((2 * submergedWeight_N) / (density_kg_m3 * dragArea_m2));
}
