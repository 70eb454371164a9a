import { OFF_BOTTOM_M } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords, several, shuffled } from '../draw';
import type { Generator } from '../generator';
import { onlyGood } from '../limits-item';
import { shownDrag } from '../moves';
import { saidFeet, saidSeconds } from '../said';

/** How many of the wrong ones do less than the right one: none, one or both, each as often. */
const RANKS = [0, 1, 2] as const;
/** No sweep of a 7 ft rod takes its tip so far away, m. */
const FARTHEST_M = 3;
/** Farther than a shorter drag brings the jig, m: more than a boat can tell apart. */
const BEYOND_M = 0.03;
/**
 * A tip that goes no faster than this drags any of these jigs, and one that goes faster than that lifts
 * nearly all of them, ft/s. Only what lies between is left out here; the model decides each anew.
 */
const SLOW_FT_S = 0.75;
const QUICK_FT_S = 1.2;

/** As far as a low sweep of such a rod takes its tip, ft. */
const TIPS_FT = [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5];

/** The slowest of three is no answer: as often it stays down, and so does one that covers more. */
const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 40])) });
    const duration_s = pick(random, [2, 2.5, 3, 3.5, 4]);
    const shorter = dealt(share, RANKS);
    const inTime = (isSo: (ft_s: number) => boolean) =>
      TIPS_FT.filter((tip) => isSo(tip / duration_s));
    const slow = several(
      random,
      inTime((ft_s) => ft_s <= SLOW_FT_S),
      shorter + 1
    );
    const quick = several(
      random,
      inTime((ft_s) => ft_s >= QUICK_FT_S),
      2 - shorter
    );
    const tips = [...slow, ...quick];
    if (tips.length < 3) return null;
    const [best, less = 0] = [tips[shorter], tips[shorter - 1]];
    return onlyGood({
      ask: `${placeWords(setup)} You sweep a low rod for ${saidSeconds(duration_s)}. Which is the longest of these drags that stays on bottom?`,
      limits: [
        { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M },
        {
          measure: 'travel_m',
          unknowns: 'slack and drag',
          least: ft(less) + BEYOND_M,
          most: FARTHEST_M
        }
      ],
      plans: shuffled(random, tips).map((tip) => {
        const says = `${saidFeet(tip)} of tip`;
        const dragged = { caption: says, run: shownDrag(setup, ft(tip), duration_s) };
        return {
          id: `f${tip * 2}`,
          says,
          reply:
            tip < best
              ? `It stays down, and so does ${saidFeet(best)}: you leave ${saidFeet(best - tip)} unfished.`
              : `${saidFeet(tip)} is too much tip for ${saidSeconds(duration_s)}: the jig comes off bottom.`,
          runs: [dragged, dragged]
        };
      }),
      right: 'Right. It covers the most ground and still stays down.',
      explain:
        'Divide how far by how long: pace lifts a jig. Far out or heavy, it takes more. Close in or light, it takes less.'
    });
  }
};

export const paces = [paceLimit];
