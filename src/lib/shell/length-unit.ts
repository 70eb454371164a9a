import { FOOT_M, INCH_M } from '$lib/model';
import type { Units } from '$lib/scoring';

const CM_M = 0.01;

/** How a length is typed in these units: of something held in the hands, or of water. */
export function lengthUnit(units: Units, isLong: boolean) {
  const [name, unit_m] = (
    units === 'metric'
      ? [
          ['cm', CM_M],
          ['m', 1]
        ]
      : [
          ['in', INCH_M],
          ['ft', FOOT_M]
        ]
  )[isLong ? 1 : 0] as [string, number];
  return {
    name,
    shown: (m: number) => Math.round((m / unit_m) * 100) / 100,
    /** 0 where it is no length. */
    read: (text: string) => {
      const typed = Number(text.replace(',', '.'));
      return Number.isFinite(typed) && typed > 0 ? typed * unit_m : 0;
    }
  };
}
