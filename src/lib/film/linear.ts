/** A pivot smaller than this share of the largest means that the rows tell too little. */
const SINGULAR = 1e-12;

/** x of A x = b by Gaussian elimination with pivots of rows [A | b], which are used up; null where it has none. */
export function solveLinear(rows: number[][]): number[] | null {
  const n = rows.length;
  const largest = Math.max(...rows.flat().map(Math.abs));
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++) {
      if (Math.abs(rows[row][column]) > Math.abs(rows[pivot][column])) pivot = row;
    }
    if (Math.abs(rows[pivot][column]) < SINGULAR * largest) return null;
    [rows[column], rows[pivot]] = [rows[pivot], rows[column]];
    for (let row = 0; row < n; row++) {
      if (row === column) continue;
      const share = rows[row][column] / rows[column][column];
      for (let k = column; k <= n; k++) rows[row][k] -= share * rows[column][k];
    }
  }
  return rows.map((row, i) => row[n] / row[i]);
}
