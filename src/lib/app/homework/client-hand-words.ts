import { biasText, type Ruler } from '$lib/practice';
import { formatLength, formatShare, type Units } from '$lib/scoring';

/** A client's hand at a distance, as their guide reads it: of them, where the ruler speaks to a learner. */
export function clientHandWords(ruler: Ruler, meant_m: number, units: Units) {
  const { bait, scores, marks, isSettled } = ruler;
  const length = (m: number) => formatLength(m, units);
  const known = bait.isMoving || !isSettled ? ' Not settled yet.' : '';
  return {
    goes: `Means ${length(meant_m)}, moves it ${length(bait.value * meant_m)}.`,
    why:
      `${biasText(bait)}. Single tries stray by ${formatShare(scores.variable)}. ` +
      `Known to ${length(bait.band * meant_m)} after ${marks.length} tries.${known}`
  };
}
