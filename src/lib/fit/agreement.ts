/** One person's value of one number, with its deviation; on a scale on which errors are even. */
export interface PooledValue {
  value: number;
  sd: number;
}

/** What several people's values say together. docs/jig-table-format.md. */
export interface Agreement {
  /** With what they differ by beyond their errors counted in (DerSimonian and Laird 1986). */
  mean: number;
  sd: number;
  /** Deviation from person to person that their own errors do not explain. */
  between_sd: number;
  /** √(Q/(n − 1)): about 1 where the errors explain how far the values lie apart (Birge 1932). */
  birge: number;
  /** Whether Q stays below what it exceeds by chance one time in twenty (Cochran 1954). */
  agrees: boolean;
  /** Of each value from what the others say, in deviations; none where there are fewer than three. */
  z: readonly number[] | null;
}

/** Two are all that can be compared, and which of them is off they do not say. */
const LEAST_FOR_Z = 3;

/**
 * Pools independent values. With w = 1/s², the weighted mean is ȳ = Σwy/Σw and Q = Σw(y − ȳ)². What is
 * left over is τ² = max(0, (Q − (n − 1))/(Σw − Σw²/Σw)), and the mean is weighted anew by 1/(s² + τ²).
 * Null for fewer than two: one value is nobody's agreement.
 */
export function agreementOf(values: readonly PooledValue[]): Agreement | null {
  const free = values.length - 1;
  if (free < 1) return null;
  const pooled = pool(values);
  return {
    ...{ mean: pooled.mean, sd: pooled.sd, between_sd: Math.sqrt(pooled.between) },
    birge: Math.sqrt(pooled.q / free),
    agrees: pooled.q <= chiSquare95(free),
    z: values.length < LEAST_FOR_Z ? null : values.map((one, i) => zOf(one, without(values, i)))
  };
}

interface Pooled {
  mean: number;
  sd: number;
  /** Variance between people. */
  between: number;
  q: number;
}

function pool(values: readonly PooledValue[]): Pooled {
  const weights = values.map(({ sd }) => 1 / sd ** 2);
  const plain = weighted(values, weights);
  const q = values.reduce((sum, { value }, i) => sum + weights[i] * (value - plain.mean) ** 2, 0);
  const squares = weights.reduce((sum, w) => sum + w * w, 0);
  const scale = plain.total - squares / plain.total;
  // Of one value nothing is left over.
  const between = scale > 0 ? Math.max(0, (q - (values.length - 1)) / scale) : 0;
  const { mean, total } = weighted(
    values,
    values.map(({ sd }) => 1 / (sd ** 2 + between))
  );
  return { mean, sd: Math.sqrt(1 / total), between, q };
}

function weighted(values: readonly PooledValue[], weights: readonly number[]) {
  const total = weights.reduce((sum, w) => sum + w, 0);
  const mean = values.reduce((sum, { value }, i) => sum + weights[i] * value, 0) / total;
  return { mean, total };
}

const without = <T>(all: readonly T[], i: number): T[] => all.filter((_, j) => j !== i);

/** The zeta score of ISO 13528, against the others and what they differ by among themselves. */
function zOf({ value, sd }: PooledValue, others: readonly PooledValue[]): number {
  const { mean, sd: meanSd, between } = pool(others);
  return (value - mean) / Math.sqrt(sd ** 2 + meanSd ** 2 + between);
}

/** Above |z| = 2 a value is to be looked at, above 3 it is taken to be off (ISO 13528, 9.4). */
export const LOOK_AT_Z = 2;
export const OFF_AT_Z = 3;

/** Normal quantile of 0.95. */
const Z95 = 1.644854;

/** What chi square stays below 19 times in 20 (Wilson and Hilferty 1931: within 3 % from one degree on). */
export function chiSquare95(free: number): number {
  const part = 2 / (9 * free);
  return free * (1 - part + Z95 * Math.sqrt(part)) ** 3;
}
