import { OFF_BOTTOM_M, type GroundKind } from '../../../model';
import { dealt, drawGear, ft, inch, oz, pick } from '../draw';
import type { Generator } from '../generator';
import { onlyGood, type Plan } from '../limits-item';
import { nominalOf } from '../measure';
import { fall, shownDrag } from '../moves';
import { saidOut, saidSeconds, saidWeight } from '../said';

const WAY_FT = 2;
const BOTTOMS = ['mud', 'sand', 'clay'] as const satisfies readonly GroundKind[];

/** Longer than a jig of this weight falls on any of the lines, s: an ounce needs 2 s a metre. */
const longest = (depth_m: number, ounces: number) => 2 + (2.6 * depth_m) / Math.sqrt(ounces);
const BOX_OZ = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1];

/** Drags that stay down, slow to slower, s, and such as leave the bottom. */
const SLOW_S = [3, 4, 5, 6] as const;
const QUICK_S = 0.5;
/** A count is met within a second. */
const COUNTED_S = 1;
/** Places in the box of what is timed, what is right, and what falls too slowly and too fast: all others. */
const STEPS = [
  { timed: 1, light: 0, good: 2, heavy: 4 },
  { timed: 3, light: 0, good: 2, heavy: 5 },
  { timed: 5, light: 0, good: 2, heavy: 4 },
  { timed: 2, light: 1, good: 3, heavy: 5 },
  { timed: 4, light: 0, good: 2, heavy: 5 },
  { timed: 0, light: 1, good: 3, heavy: 5 }
] as const;
/**
 * The wrong ones beside the right one, by weight and pace. The right weight stands alone or twice, is the
 * heaviest, the middle one or the lightest, and the right pace the slowest or not: no place in the row
 * tells it (check:items tries them). In each row one is dragged too quickly: else no pace would be asked.
 */
const BESIDE = [
  ['light slower', 'good quick'],
  ['light own', 'light quick'],
  ['heavy slower', 'good quick'],
  ['heavy quicker', 'heavy quick'],
  ['light own', 'heavy quick'],
  ['light own', 'good quick'],
  ['light slower', 'light quick'],
  ['heavy quicker', 'good quick']
] as const;

const weightAndPace: Generator = {
  id: 'weight-and-pace',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random, share) => {
    const setup = drawGear(random, { cast_m: ft(pick(random, [40, 50])), slack_m: inch(1) });
    const { depth_m } = setup.water;
    const steps = pick(random, STEPS);
    const beside = dealt(share, BESIDE);
    const bottom = { ground: { kind: pick(random, BOTTOMS), seed: 11 } };
    const pace_s = pick(random, SLOW_S.slice(1, 3));
    const paces = { slower: pace_s + 1, quicker: pace_s - 1, quick: QUICK_S, own: pace_s };

    const withWeight = (ounces: number) => ({
      ...setup,
      bait: { ...setup.bait, mass_kg: oz(ounces) }
    });
    const falling = (ounces: number) => fall(withWeight(ounces), longest(depth_m, ounces));
    const count = (ounces: number) => Math.round(nominalOf(falling(ounces), 'fall_s'));
    const [timed, good] = [BOX_OZ[steps.timed], BOX_OZ[steps.good]];
    const [least_s, most_s] = [count(good) - COUNTED_S, count(good) + COUNTED_S];
    // What falls in that time already stays on.
    if (count(timed) >= least_s && count(timed) <= most_s) return null;

    const plan = (weight: 'light' | 'good' | 'heavy', pace: keyof typeof paces): Plan => {
      const ounces = BOX_OZ[steps[weight]];
      const name = `${saidWeight(oz(ounces))}, dragged in ${saidSeconds(paces[pace])}`;
      const dragged = { ...withWeight(ounces), bottom };
      return {
        id: `w${ounces * 8}-s${paces[pace] * 10}`,
        says: name,
        reply: pace === 'quick' ? TOO_QUICK[weight] : OFF_COUNT[weight],
        runs: [
          { caption: `${saidWeight(oz(ounces))}: the fall`, run: falling(ounces) },
          { caption: name, run: shownDrag(dragged, ft(WAY_FT), paces[pace]) }
        ]
      };
    };
    return onlyGood({
      ask: `${saidOut(depth_m)} of water over ${bottom.ground.kind}. You timed ${saidWeight(oz(timed))} here: ${count(timed)} seconds down. Now you want it to fall ${count(timed) < least_s ? 'slower' : 'faster'}, in ${least_s} to ${most_s} seconds, then a {2 ft|60 cm} drag that stays down, ${saidOut(setup.start.bait_x_m)} out. What do you tie on, and how fast?`,
      timed: {
        caption: `${saidWeight(oz(timed))}: the fall you timed`,
        run: falling(timed),
        fall_s: count(timed)
      },
      limits: [
        { measure: 'fall_s', unknowns: 'drag', least: least_s, most: most_s },
        { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M }
      ],
      plans: [
        plan('good', 'own'),
        ...beside.map((one) => {
          const [weight, pace] = one.split(' ') as ['light', 'slower'];
          return plan(weight, pace);
        })
      ],
      right: 'Right. It falls in your count, and it’s slow enough to stay down.',
      explain:
        'Weight sets the fall, pace keeps it down. Four times the weight falls twice as fast. Some guides want a slow fall, some a heavy jig they feel.'
    });
  }
};

const OFF_COUNT = {
  light: 'Too light: it’s still falling when your count is up.',
  good: 'It falls in your count, so look at the pace.',
  heavy: 'Too heavy: it’s down before your count starts.'
} as const;
const TOO_QUICK = {
  light: 'Too light for your count, and dragged that fast it leaves the bottom.',
  good: 'It falls in your count, but dragged that fast it leaves the bottom.',
  heavy: 'Too heavy for your count, and that’s too fast for a drag.'
} as const;

export const plans = [weightAndPace];
