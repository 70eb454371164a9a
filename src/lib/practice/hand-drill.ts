import { formatShare } from '../scoring';
import { MASTERED } from './design';

/** What is known of a hand, as parts of the distance meant. */
export interface HandSaid {
  goes: number;
  band: number;
  tries: number;
  strays: number;
  lifted: number;
}

/** A lesson whose drill a hand needs most, and why. */
export interface HandDrill {
  lesson: string;
  title: string;
  why: string;
}

/** From this share of tries off the bottom on, pace comes before distance. */
const MOSTLY_LIFTED = 0.3;
/** What a hand must reach (design.ts). */
const { bias: MOST_BIAS, spread: MOST_STRAY } = MASTERED.travel;

/** The drill for this hand: what lifts first, then what is off, then what is uneven. */
export function handDrill(hand: HandSaid | null): HandDrill {
  if (!hand) {
    return { lesson: 'one-foot', title: 'One foot', why: 'Nobody has measured your hand yet.' };
  }
  const { goes, strays, lifted } = hand;
  if (lifted >= MOSTLY_LIFTED) {
    const why = `${formatShare(lifted)} of your tries left the bottom. Fix pace first, then distance.`;
    return { lesson: 'speed', title: 'Pace', why };
  }
  if (Math.abs(goes - 1) > MOST_BIAS) {
    const why = `Your jig goes ${formatShare(goes)} of what you want. Aim for the number below.`;
    return { lesson: 'your-hands-ruler', title: 'Your hand’s ruler', why };
  }
  if (strays > MOST_STRAY) {
    const why = `Your drags differ by ${formatShare(strays)}. Same drag, slower, the same every time.`;
    return { lesson: 'one-foot', title: 'One foot', why };
  }
  return { lesson: 'slack', title: 'Slack', why: 'Your reach is true and even. Slack is next.' };
}
