import type { Advice, HandRuler } from '$lib/server/hand-ruler';
import { formatLength, type Units } from '$lib/scoring';

type Ruler = HandRuler & { advice: Advice };

/** How far the hand is off, in words. */
export function errorWords({ bias_m, spread_m }: HandRuler, units: Units): string {
  const off = formatLength(Math.abs(bias_m), units);
  const side = bias_m > 0 ? 'too far' : 'too short';
  return `${off} ${side} on average, give or take ${formatLength(spread_m, units)}`;
}

/** What a guide would say next to this hand. */
export function adviceWords({ advice, bias_m }: Ruler, units: Units): string {
  const off = formatLength(Math.abs(bias_m), units);
  const words: Record<Advice, string> = {
    shorter: `Aim ${off} shorter than it feels right.`,
    longer: `Aim ${off} longer than it feels right.`,
    slower: 'The hand is uneven: the same move, at half the speed.',
    harder: 'In the band. Make it harder: hide the bait, or change the depth.'
  };
  return words[advice];
}
