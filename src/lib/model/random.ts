/** A source of numbers from 0 to below 1, in place of chance. */
export type Random = () => number;

/**
 * The same numbers for the same seed, in every engine: mulberry32 (Tommy Ettinger, public domain),
 * 32 bits of state, whole-number arithmetic only.
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}
