/** A point of the function that is looked through. */
interface Point {
  x: number;
  y: number;
}

/** Where to stop looking: a stone can make the function jump past the target. */
const MOST_ROUNDS = 12;

/**
 * Finds `x` between `low` and `high` where a rising function comes within `tolerance` of 0, or null
 * if it does not. Regula falsi with the Illinois step: keeps a bracket like halving and is about as
 * fast as the secant (Dowell & Jarratt 1971, BIT 11, 168).
 */
export function regulaFalsi(
  f: (x: number) => number,
  low: Point,
  high: Point,
  tolerance: number
): number | null {
  let a = low;
  let b = high;
  let kept: 'a' | 'b' | null = null;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const x = (a.x * b.y - b.x * a.y) / (b.y - a.y);
    const y = f(x);
    if (Math.abs(y) <= tolerance) return x;
    if (y > 0) {
      b = { x, y };
      if (kept === 'a') a = { x: a.x, y: a.y / 2 };
      kept = 'a';
    } else {
      a = { x, y };
      if (kept === 'b') b = { x: b.x, y: b.y / 2 };
      kept = 'b';
    }
  }
  return null;
}
