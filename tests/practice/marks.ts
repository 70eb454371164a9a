import type { Mark } from '../../src/lib/practice';

export const FOOT = 0.3048;

/** A try that went `ratio` times as far as was meant. */
export function aMark(n: number, ratio: number, more: Partial<Mark> = {}): Mark {
  const meant_m = more.meant_m ?? FOOT;
  return {
    id: `t${n}`,
    challenge: 'reed-bay-drag',
    at: new Date(Date.UTC(2030, 4, 1, 8, n)).toISOString(),
    meant_m,
    bait_m: meant_m * ratio,
    tip_m: meant_m * ratio * 0.98,
    lift_m: 0,
    speed_m_s: 0.21,
    isPaceRight: true,
    ...more
  };
}
