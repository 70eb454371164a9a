import { TAKES_ALL } from '../samples';

/** So many steps are taken at once first. */
const AT_ONCE = 4;

export interface Jump {
  /** Of the sweep, from 0 to 1. */
  part: number;
  from: number;
  to: number;
}

/**
 * Marks all along a sweep, and where neighbours lie more than `most` apart. A few steps at once are taken
 * first, and each of them alone only where the marks change by half as much or more: a jump that is not
 * taken back at once is missed nowhere. Each step is taken where every sample is.
 */
export function swept(
  steps: number,
  marksAt: (part: number) => number,
  most: number
): { marks: number[]; jumps: Jump[] } {
  const known = new Map<number, number>();
  const at = (i: number) => {
    const marks = known.get(i) ?? marksAt(i / steps);
    known.set(i, marks);
    return marks;
  };
  const jumps: Jump[] = [];
  const stride = TAKES_ALL ? 1 : AT_ONCE;
  for (let from = 0; from < steps; from += stride) {
    const to = Math.min(steps, from + stride);
    if (Math.abs(at(to) - at(from)) < most / 2) continue;
    for (let i = from + 1; i <= to; i++)
      if (Math.abs(at(i) - at(i - 1)) > most)
        jumps.push({ part: i / steps, from: at(i - 1), to: at(i) });
  }
  return { marks: [...known.values()], jumps };
}
