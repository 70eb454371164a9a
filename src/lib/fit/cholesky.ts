/** A symmetric matrix as rows. */
export type Matrix = readonly (readonly number[])[];

/** The lower factor L of a symmetric positive definite matrix, A = L·Lᵀ (Cholesky–Banachiewicz). */
export function factorOf(a: Matrix): number[][] {
  const l = a.map((row) => row.map(() => 0));
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = a[i][j];
      for (let k = 0; k < j; k++) rest -= l[i][k] * l[j][k];
      if (i !== j) l[i][j] = rest / l[j][j];
      else if (rest > 0) l[i][i] = Math.sqrt(rest);
      else throw new RangeError(`the matrix is not positive definite: pivot ${i} is ${rest}`);
    }
  }
  return l;
}

/** x with A·x = b, for a symmetric positive definite A. Throws RangeError for another. */
export function solved(a: Matrix, b: readonly number[], l: Matrix = factorOf(a)): number[] {
  const y = [...b];
  for (let i = 0; i < y.length; i++) {
    for (let k = 0; k < i; k++) y[i] -= l[i][k] * y[k];
    y[i] /= l[i][i];
  }
  for (let i = y.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < y.length; k++) y[i] -= l[k][i] * y[k];
    y[i] /= l[i][i];
  }
  return y;
}

/** The inverse of a symmetric positive definite matrix. */
export function inverseOf(a: Matrix): number[][] {
  return a.map((_, i) =>
    solved(
      a,
      a.map((__, j) => (i === j ? 1 : 0))
    )
  );
}

/** The natural logarithm of the determinant. */
export function logDeterminant(a: Matrix): number {
  return factorOf(a).reduce((sum, row, i) => sum + 2 * Math.log(row[i]), 0);
}

/** L·z, a draw with covariance A from independent standard normal numbers z. */
export function correlated(a: Matrix, z: readonly number[]): number[] {
  return factorOf(a).map((row) => row.reduce((sum, value, k) => sum + value * z[k], 0));
}
