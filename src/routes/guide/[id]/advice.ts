import { formatLength, type Units } from '$lib/scoring';

/** A hand's errors at a distance, m, as the server reckons them. */
export interface HandErrors {
  target_m: number;
  band_m: number;
  bias_m: number;
  spread_m: number;
}

export type Advice = 'shorter' | 'longer' | 'slower' | 'harder';

/** How far the hand is off, in words. */
export function errorWords({ bias_m, spread_m }: HandErrors, units: Units): string {
  const off = formatLength(Math.abs(bias_m), units);
  const side = bias_m > 0 ? 'too far' : 'too short';
  return `${off} ${side} on average, give or take ${formatLength(spread_m, units)}`;
}

/** What a guide would say next to this hand. */
export function adviceWords(advice: Advice, errors: HandErrors, units: Units): string {
  const off = formatLength(Math.abs(errors.bias_m), units);
  const words: Record<Advice, string> = {
    shorter: `Aim ${off} shorter than it feels right.`,
    longer: `Aim ${off} longer than it feels right.`,
    slower: 'The hand is uneven: the same move, at half the speed.',
    harder: 'In the band. Make it harder: hide the bait, or change the depth.'
  };
  return words[advice];
}
