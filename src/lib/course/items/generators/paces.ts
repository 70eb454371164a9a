import { OFF_BOTTOM_M, type Random } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords, several, shuffled, isCloseIn } from '../draw';
import type { Generator } from '../generator';
import type { ShownRun } from '../../lesson';
import { onlyGood } from '../limits-item';
import { measured } from '../measure';
import { shownDrag } from '../moves';
import { saidFeet, saidSeconds } from '../said';

/**
 * Places of the right one among three, by length and by time, 0 the least: each as often. A long one that
 * stays down takes its time, and a short one may.
 */
const RANKS = [
  { length: 0, time: 0 },
  { length: 0, time: 2 },
  { length: 1, time: 0 },
  { length: 1, time: 1 },
  { length: 2, time: 1 },
  { length: 2, time: 2 }
] as const;
/** No sweep of a 7 ft rod takes its tip so far away, m. */
const FARTHEST_M = 3;
/** Farther than a shorter drag brings the jig, m: more than a boat can tell apart. */
const BEYOND_M = 0.03;
/**
 * A tip that goes no faster than this drags any of these jigs, and one that goes faster than that lifts
 * nearly all of them, ft/s. Only what lies between is left out here; the model decides each anew.
 */
const SLOW_FT_S = 0.5;
const QUICK_FT_S = 1.2;
/** Quicker than this is no drag to anybody, and no answer to weigh, ft/s: common practice, no source. */
const SNAP_FT_S = 3;

/** As far as a low sweep of such a rod takes its tip, ft. */
const TIPS_FT = [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5];

/** How long a sweep takes, s. */
const SWEEPS_S = [0.5, 1, 1.5, 2, 3, 4, 5, 6];

interface Sweep {
  tip: number;
  s: number;
}

const isSlow = ({ tip, s }: Sweep) => tip / s <= SLOW_FT_S;
const saidSweep = ({ tip, s }: Sweep) => `${saidFeet(tip)} in ${saidSeconds(s)}`;
const SWEEPS = TIPS_FT.flatMap((tip) => SWEEPS_S.map((s) => ({ tip, s }))).filter(
  (one) => isSlow(one) || (one.tip / one.s >= QUICK_FT_S && one.tip / one.s < SNAP_FT_S)
);
/** Draws until three fit: about one in fifty does. */
const DRAWS = 1000;

/** Three of unlike lengths and times, shortest first: one at least lifts, and no longer one than the right one stays down. */
function drawnSweeps(random: Random, { length, time }: (typeof RANKS)[number]): Sweep[] | null {
  for (let i = 0; i < DRAWS; i++) {
    const three = several(random, SWEEPS, 3).sort((a, b) => a.tip - b.tip);
    const [tips, times] = [three.map(({ tip }) => tip), three.map(({ s }) => s)];
    const isUnlike = new Set(tips).size === 3 && new Set(times).size === 3;
    const isPlaced = times.filter((s) => s < times[length]).length === time;
    // Beside all but the shortest a second one stays down: the slowest alone is then no answer.
    const slow = three.map(isSlow);
    const isRight =
      slow.lastIndexOf(true) === length && slow.filter(Boolean).length === Math.min(length + 1, 2);
    if (isUnlike && isPlaced && isRight) return three;
  }
  return null;
}

/** Whether the jig leaves the bottom, whatever slack and drag area are. */
function lifts(run: ShownRun): boolean {
  const { nominal, corners } = measured(run, 'peak_height_m', 'slack and drag');
  return Math.min(nominal, ...corners) > OFF_BOTTOM_M;
}

/** Neither the slowest of three is the answer nor the shortest: as often one that is longer stays down. */
const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 40])) });
    if (isCloseIn(setup)) return null;
    const rank = dealt(share, RANKS);
    const sweeps = drawnSweeps(random, rank);
    if (!sweeps) return null;
    const best = sweeps[rank.length].tip;
    const less = Math.max(
      0,
      ...sweeps.filter((one) => isSlow(one) && one.tip < best).map(({ tip }) => tip)
    );
    const run = ({ tip, s }: Sweep) => shownDrag(setup, ft(tip), s);
    const draft = onlyGood({
      ask: `${placeWords(setup)} You sweep a low rod. Which is the longest of these drags that stays on bottom?`,
      limits: [
        { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M },
        {
          measure: 'travel_m',
          unknowns: 'slack and drag',
          least: ft(less) + BEYOND_M,
          most: FARTHEST_M
        }
      ],
      plans: shuffled(random, sweeps).map((one) => {
        const { tip, s } = one;
        const says = `${saidFeet(tip)} of tip in ${saidSeconds(s)}`;
        const dragged = { caption: says, run: run(one) };
        return {
          id: `f${tip * 2}-s${s * 10}`,
          says,
          reply: isSlow(one)
            ? `It stays down, but so does ${saidSweep(sweeps[rank.length])}, and that’s longer.`
            : `${saidSweep(one)} is too quick: the jig comes off bottom.`,
          runs: [dragged, dragged]
        };
      }),
      right: 'Right. It’s the longest that stays down.',
      // As slow as SLOW_FT_S, which the boat card's counts allow; QUICK_FT_S rounded up.
      explain:
        'Feet over seconds. At this distance {1 ft|30 cm} in 2 seconds stays down; quicker than {1 ft|30 cm} in ¾ second nearly everything lifts.'
    });
    // A short one that is quick and stays down is beside the point: what is said to it would be false.
    return draft && sweeps.every((one) => isSlow(one) || lifts(run(one))) ? draft : null;
  }
};

export const paces = [paceLimit];
