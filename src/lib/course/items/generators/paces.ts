import { OFF_BOTTOM_M } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords, shuffled, isCloseIn } from '../draw';
import type { Generator } from '../generator';
import { onlyGood } from '../limits-item';
import { shownDrag } from '../moves';
import { saidFeet, saidSeconds } from '../said';

/** A low sweep: as far as its tip goes, ft, and how long it takes, s. */
type Sweep = readonly [tip: number, s: number];
type Want = 'stays' | 'lifts';

/**
 * What is wanted, the right sweep, and the two beside it: the longest that stays down has none that is longer and
 * stays, the shortest that lifts none that is shorter and lifts. Each sweep, each length and each time is
 * right in about one of three questions that have it.
 */
const ROWS: readonly (readonly [Want, Sweep, Sweep, Sweep])[] = [
  ['stays', [0.5, 1], [1.5, 0.5], [3.5, 2]],
  ['lifts', [1.5, 0.5], [3, 1], [2, 5]],
  ['stays', [0.5, 2], [1.5, 0.5], [2, 1]],
  ['lifts', [1.5, 0.5], [1, 4], [2, 5]],
  ['stays', [1, 4], [1.5, 0.5], [3.5, 2]],
  ['lifts', [2, 1], [4, 2], [1, 3]],
  ['stays', [1, 4], [1.5, 0.5], [2, 1]],
  ['lifts', [2.5, 1], [1.5, 5], [2, 6]],
  ['stays', [1, 3], [0.5, 1], [4, 2]],
  ['lifts', [2.5, 1], [1, 3], [2, 4]],
  ['stays', [1, 3], [0.5, 2], [2.5, 1]],
  ['lifts', [3, 1], [3.5, 2], [1.5, 3]],
  ['stays', [1.5, 3], [1, 4], [2.5, 1]],
  ['lifts', [3, 1], [1, 4], [1.5, 3]],
  ['stays', [1.5, 5], [3, 1], [4, 2]],
  ['lifts', [3.5, 2], [1.5, 5], [2, 6]],
  ['stays', [1.5, 5], [1, 3], [2.5, 1]],
  ['lifts', [3.5, 2], [1, 3], [2.5, 5]],
  ['stays', [2, 5], [3, 1], [4, 2]],
  ['lifts', [4, 2], [0.5, 1], [1, 4]],
  ['stays', [2, 6], [1.5, 5], [4, 2]],
  ['lifts', [4, 2], [2, 4], [2.5, 5]],
  ['stays', [2, 4], [1.5, 5], [2.5, 1]],
  ['stays', [2.5, 5], [0.5, 2], [3, 1]]
];

/** A tip that goes no faster drags any of these jigs, ft/s; those in `ROWS` that do lift most. The model decides each anew. */
const SLOW_FT_S = 0.5;
/** No sweep of a 7 ft rod brings a jig so far, m. */
const FARTHEST_M = 3;
/** No lift that anybody takes for the skip of a drag: from two inches on, and no higher than the water, m. */
const LIFTED_M = { least: 0.05, most: 10 };

const isSlow = ([tip, s]: Sweep) => tip / s <= SLOW_FT_S;
const saidSweep = ([tip, s]: Sweep) => `${saidFeet(tip)} in ${saidSeconds(s)}`;

/** Those that do what is wanted, and the one of them that is right. */
const ASKED = {
  stays: {
    does: isSlow,
    asks: 'Which is the longest of these drags that stays on bottom?',
    right: 'Right. It’s the longest that stays down.',
    alone: {
      asks: 'Which of these stays on bottom?',
      right: 'Right. It’s slow enough to stay down.'
    },
    alike: (right: Sweep) => `It stays down, but so does ${saidSweep(right)}, and that’s longer.`,
    other: (one: Sweep) => `${saidSweep(one)} is too quick: the jig comes off bottom.`,
    height: { most: OFF_BOTTOM_M }
  },
  lifts: {
    does: (one: Sweep) => !isSlow(one),
    asks: 'Which is the shortest of these sweeps that lifts it off bottom?',
    right: 'Right. It’s the shortest that lifts.',
    alone: {
      asks: 'Which of these lifts it off bottom?',
      right: 'Right. It’s quick enough to lift.'
    },
    alike: (right: Sweep) => `It lifts, but so does ${saidSweep(right)}, and that’s shorter.`,
    other: (one: Sweep) => `${saidSweep(one)} is too slow: the jig stays on bottom.`,
    height: LIFTED_M
  }
} as const;

const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 40])) });
    if (isCloseIn(setup)) return null;
    const [want, right, ...others] = dealt(share, ROWS);
    const { does, height, alone, ...asked } = ASKED[want];
    // Half way to the next one that does it, too: what is told apart is farther than a boat can miss.
    const next = others.find(does);
    const said = next ? asked : alone;
    const halfWay_m = next && ft((right[0] + next[0]) / 2);
    const travel =
      want === 'stays'
        ? { least: halfWay_m ?? 0, most: FARTHEST_M }
        : { least: 0, most: halfWay_m ?? FARTHEST_M };
    return onlyGood({
      ask: `${placeWords(setup)} You sweep a low rod. ${said.asks}`,
      limits: [
        { measure: 'peak_height_m', unknowns: 'slack and drag', ...height },
        { measure: 'travel_m', unknowns: 'slack and drag', ...travel }
      ],
      plans: shuffled(random, [right, ...others]).map((one) => {
        const [tip, s] = one;
        const says = `${saidFeet(tip)} of tip in ${saidSeconds(s)}`;
        const swept = { caption: says, run: shownDrag(setup, ft(tip), s) };
        return {
          id: `f${tip * 2}-s${s * 10}`,
          says,
          reply: does(one) ? asked.alike(right) : asked.other(one),
          runs: [swept, swept]
        };
      }),
      right: said.right,
      // As slow as SLOW_FT_S, which the boat card's counts allow; the quick ones of ROWS are quicker.
      explain:
        'Count how many seconds for each foot. At this distance {1 ft|30 cm} in 2 seconds stays down; quicker than {1 ft|30 cm} in ¾ second nearly everything lifts.'
    });
  }
};

export const paces = [paceLimit];
