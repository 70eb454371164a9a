import { formatLength, type Units } from '$lib/scoring';
import type { HandAdvice, HandRuler } from '$lib/wire';

type Ruler = HandRuler & { advice: HandAdvice };

/** How far the hand is off, in words: an average only where it is most of the error. */
export function errorWords(ruler: HandRuler, units: Units): string {
  const { bias_m, spread_m, tries, short, far } = ruler;
  const spread = formatLength(spread_m, units);
  if (Math.abs(bias_m) >= spread_m) {
    const side = bias_m > 0 ? 'too far' : 'too short';
    return `${formatLength(Math.abs(bias_m), units)} ${side} on average, give or take ${spread}`;
  }
  const sides = [
    short > 0 ? `${short} too short` : '',
    far > 0 ? `${far} too far` : '',
    tries > short + far ? `${tries - short - far} near enough` : ''
  ].filter(Boolean);
  return `${sides.join(', ')}: ${spread} apart from try to try`;
}

/** What a guide would say next to this hand. */
export function adviceWords({ advice, bias_m }: Ruler, units: Units): string {
  const off = formatLength(Math.abs(bias_m), units);
  const words: Record<HandAdvice, string> = {
    shorter: `Aim ${off} shorter than it feels right.`,
    longer: `Aim ${off} longer than it feels right.`,
    slower: 'The hand is uneven: the same move again, slowly and each time alike.',
    harder: 'In the band. Make it harder: hide the bait, or change the depth.',
    unclear: 'Too few, and too different, to say more. Ask for five tries in a row.'
  };
  return words[advice];
}
