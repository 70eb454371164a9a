import { biasText, rulerAt, type Ruler } from '$lib/practice';
import { formatLength, formatShare, type Units } from '$lib/scoring';

/** A client's hand at a distance, as their guide reads it: of them, where the ruler speaks to a learner. */
export function clientHandWords(ruler: Ruler, meant_m: number, units: Units) {
  // The distance is one of the hand's own; where too few tries lie near it, all of them speak.
  const { bait, scores, marks, isSettled } = rulerAt(ruler, meant_m) ?? ruler;
  const length = (m: number) => formatLength(m, units);
  const known = bait.isMoving || !isSettled ? ' Not settled yet.' : '';
  return {
    goes: `Means ${length(meant_m)}, moves it ${length(bait.value * meant_m)}.`,
    why:
      `${biasText(bait)}. Single tries stray by ${formatShare(scores.variable)}. ` +
      `Known to ${length(bait.band * meant_m)} after ${marks.length} tries.${known}`
  };
}
