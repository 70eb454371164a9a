import { OFF_BOTTOM_M } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords, several, shuffled } from '../draw';
import type { Generator } from '../generator';
import { onlyGood } from '../limits-item';
import { nominalOf } from '../measure';
import { shownDrag, shownLift } from '../moves';
import { saidFeet, saidHour, saidSeconds } from '../said';

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

/** The slowest of three is no answer: as often it stays down, and so does one that covers more. */
const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 40])) });
    const duration_s = pick(random, [2, 3, 4]);
    const shorter = dealt(share, RANKS);
    const inTime = (isSo: (ft_s: number) => boolean) =>
      [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6].filter((tip) => isSo(tip / duration_s));
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
              ? `That stays down, but so does ${saidFeet(best)}. You leave ground unfished.`
              : 'Too much tip for that time: the jig comes off bottom, and you feel nothing.',
          runs: [dragged, dragged]
        };
      }),
      right: 'Right. It covers the most ground and still stays down.',
      explain:
        'Divide how far by how long: pace lifts a jig. Far out or heavy, it takes more. Close in or light, it takes less.'
    });
  }
};

/** An hour of a 7 ft rod takes its tip about 0.9 m round, and at nine o’clock mostly across the line. */
const SLOW_HOURS_S = 0.4;
const QUICK_HOURS_S = 0.66;

/** Nobody takes more than four seconds over an hour of the clock, so nothing slower is asked. */
const liftLimit: Generator = {
  id: 'lift-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, {
      slack_m: inch(1),
      cast_m: ft(pick(random, [40, 45, 50, 55, 60]))
    });
    const duration_s = pick(random, [2, 3, 4]);
    const lower = dealt(share, RANKS);
    const inTime = (isSo: (hours_s: number) => boolean) =>
      [0.5, 1, 1.5, 2, 2.5, 3].filter((hours) => isSo(hours / duration_s));
    const slow = several(
      random,
      inTime((hours_s) => hours_s <= SLOW_HOURS_S),
      lower + 1
    );
    const quick = several(
      random,
      inTime((hours_s) => hours_s >= QUICK_HOURS_S),
      2 - lower
    );
    const lifts = [...slow, ...quick].map((hours) => {
      const run = shownLift(setup, FROM, FROM + hours, duration_s);
      return { hours, run, says: `up to ${saidHour(FROM + hours)} o’clock` };
    });
    if (lifts.length < 3) return null;
    const best = lifts[lower];
    const less_m = lower === 0 ? 0 : nominalOf(lifts[lower - 1].run, 'travel_m');
    return onlyGood({
      ask: `${placeWords(setup)} {7 ft|2.1 m} rod, line tight. You raise it from ${FROM} o’clock, taking ${saidSeconds(duration_s)}. Which is the highest you can go and stay on bottom?`,
      limits: [
        { measure: 'peak_height_m', unknowns: 'drag', most: OFF_BOTTOM_M },
        { measure: 'travel_m', unknowns: 'drag', least: less_m + BEYOND_M, most: FARTHEST_M }
      ],
      plans: shuffled(random, lifts).map(({ hours, run, says }) => ({
        id: `h${hours * 2}`,
        says,
        reply:
          hours < best.hours
            ? `That stays down, but you can go on ${best.says} and it still does.`
            : 'Too much rod for that time: it leaves bottom before you get there.',
        runs: [
          { caption: says, run },
          { caption: says, run }
        ]
      })),
      right: 'Right. It’s the highest of these that keeps the jig down.',
      explain:
        'On a long line a slow lift only drags it. Near the boat the line is steep, and the same lift takes it off.'
    });
  }
};

/** Where the lift begins: the rod is level. */
const FROM = 9;

export const paces = [paceLimit, liftLimit];
