import { OFF_BOTTOM_M } from '../../../model';
import { dealt, drawGear, ft, inch, isCloseIn, isFished, oz, pick } from '../draw';
import type { Generator } from '../generator';
import { onlyGood, type Plan } from '../limits-item';
import { nominalOf } from '../measure';
import { fallToBottom, shownDrag } from '../moves';
import { saidOut, saidSeconds, saidWeight } from '../said';

const WAY_FT = 2;
/** A hop that nobody takes for the skip of a drag, m: from two inches on, and no higher than the water. */
const HOPPED_M = { least: 0.05, most: 10 };

const BOX_OZ = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1];

/**
 * Sweeps that keep the jig down, s, where a slower one stands beside it, a quicker one, or neither, so that each
 * is right as often as another; and such as hop it.
 */
const SLOW_S = { slower: [4, 5], quicker: [5, 6], own: [4, 5, 6, 6] } as const;
/** What hops it, s, at times the slower of two, in rows of either kind: else that pace would tell the row. */
const QUICK_S = [0.5, 0.5, 1] as const;
/** Swept in a second, a jig of the wrong weight may stay down, and then no pace would be asked. */
const SURELY_QUICK_S = 0.5;
/** A count is met within a second. */
const COUNTED_S = 1;
/** So many places lighter or heavier in the box it surely falls too slowly, or too fast. */
const APART = 2;
/**
 * What is wanted of the sweep, and the wrong ones beside the right one, by weight and pace. The right weight
 * stands alone or twice, is the heaviest, the middle one or the lightest, and the right pace the slowest or
 * not, and as often the quick one: no place in the row and no pace tells it (check:items tries them). In
 * each row one has the wrong pace: else no pace would be asked.
 */
const ROWS = [
  { want: 'down', beside: ['light slower', 'good quick'] },
  { want: 'hop', beside: ['light quick', 'good own'] },
  { want: 'down', beside: ['light own', 'light quick'] },
  { want: 'hop', beside: ['heavy quick', 'good own'] },
  { want: 'down', beside: ['heavy slower', 'good quick'] },
  { want: 'hop', beside: ['light quick', 'light own'] },
  { want: 'down', beside: ['heavy quicker', 'heavy quick'] },
  { want: 'hop', beside: ['heavy quick', 'heavy own'] },
  { want: 'down', beside: ['light own', 'heavy quick'] },
  { want: 'hop', beside: ['light quick', 'heavy own'] },
  { want: 'down', beside: ['light own', 'good quick'] },
  { want: 'hop', beside: ['heavy own', 'good slower'] },
  { want: 'down', beside: ['light slower', 'light quick'] },
  { want: 'hop', beside: ['heavy quick', 'light own'] },
  { want: 'down', beside: ['heavy quicker', 'good quick'] },
  { want: 'hop', beside: ['light own', 'good slower'] }
] as const;
type Want = (typeof ROWS)[number]['want'];

/**
 * Each row six times, with each weight that it can be right for: one with a lighter one beside it is not the
 * lightest. The ends of the box are dealt more often: those between are right in rows of either kind.
 */
const LIGHTER = [0, 0, 1, 1, 2, 3];
const HEAVIER = [2, 3, 4, 4, 5, 5];
const MIDDLING = [2, 2, 2, 3, 3, 3];
const DEALT = ROWS.flatMap((row) => {
  const [hasLight, hasHeavy] = ['light', 'heavy'].map((one) => `${row.beside}`.includes(one));
  const goods = hasLight ? (hasHeavy ? MIDDLING : HEAVIER) : LIGHTER;
  return goods.map((good) => ({ ...row, good }));
});

/** What is said of each, and what the jig has to do. */
const WANTED = {
  down: {
    says: 'kept on bottom',
    pace: 'own',
    right: 'Right. It falls in your count, and it’s slow enough to stay down.',
    limit: { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M }
  },
  hop: {
    says: 'off bottom',
    pace: 'quick',
    right: 'Right. It falls in your count, and it’s quick enough to leave bottom.',
    limit: { measure: 'peak_height_m', unknowns: 'slack and drag', ...HOPPED_M }
  }
} as const;

const weightAndPace: Generator = {
  id: 'weight-and-pace',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random, share) => {
    const setup = drawGear(random, { cast_m: ft(pick(random, [40, 50])), slack_m: inch(1) });
    if (isCloseIn(setup)) return null;
    const { depth_m } = setup.water;
    const { want, beside, good: place } = dealt(share, DEALT);
    const near = [-2, -1, 1, 2].map((off) => place + off);
    const steps = {
      light: place - APART,
      good: place,
      heavy: place + APART,
      timed: pick(
        random,
        near.filter((one) => one in BOX_OZ)
      )
    };
    if (!isFished(BOX_OZ[place], depth_m / ft(1))) return null;
    const other = (['slower', 'quicker'] as const).find((one) => `${beside}`.includes(one));
    const pace_s = pick<number>(random, SLOW_S[other ?? 'own']);
    const isGoodQuick = `${beside}`.includes('good quick');
    const paces = {
      slower: pace_s + 1,
      quicker: pace_s - 1,
      quick: want === 'hop' || isGoodQuick ? pick<number>(random, QUICK_S) : SURELY_QUICK_S,
      own: pace_s
    };

    const withWeight = (ounces: number) => ({
      ...setup,
      bait: { ...setup.bait, mass_kg: oz(ounces) }
    });
    const falling = (ounces: number) => fallToBottom(withWeight(ounces));
    const count = (ounces: number) => Math.round(nominalOf(falling(ounces), 'fall_s'));
    const [timed, good] = [BOX_OZ[steps.timed], BOX_OZ[steps.good]];
    const [least_s, most_s] = [count(good) - COUNTED_S, count(good) + COUNTED_S];
    // What falls in that time already stays on.
    if (count(timed) >= least_s && count(timed) <= most_s) return null;

    const plan = (weight: 'light' | 'good' | 'heavy', pace: keyof typeof paces): Plan => {
      const ounces = BOX_OZ[steps[weight]];
      const name = `${saidWeight(oz(ounces))}, swept in ${saidSeconds(paces[pace])}`;
      return {
        id: `w${ounces * 8}-s${paces[pace] * 10}`,
        says: name,
        reply:
          (pace === 'quick') === (want === 'hop') && weight !== 'good'
            ? OFF_COUNT[weight](least_s)
            : OFF_PACE[want][weight],
        runs: [
          { caption: `${saidWeight(oz(ounces))}: the fall`, run: falling(ounces) },
          { caption: name, run: shownDrag(withWeight(ounces), ft(WAY_FT), paces[pace]) }
        ]
      };
    };
    return onlyGood({
      ask: `${saidOut(depth_m)} of water, smooth bottom, ${saidOut(setup.start.bait_x_m)} out. You timed ${saidWeight(oz(timed))} here: ${count(timed)} seconds down. Now you want it down in ${least_s} to ${most_s}, then ${WANTED[want].says} on a {2 ft|60 cm} sweep. Which jig, and how fast?`,
      timed: {
        caption: `${saidWeight(oz(timed))}: the fall you timed`,
        run: falling(timed),
        fall_s: count(timed)
      },
      limits: [
        { measure: 'fall_s', unknowns: 'drag', least: least_s, most: most_s },
        WANTED[want].limit
      ],
      plans: [
        plan('good', WANTED[want].pace),
        ...beside.map((one) => {
          const [weight, pace] = one.split(' ') as ['light', 'slower'];
          return plan(weight, pace);
        })
      ],
      right: WANTED[want].right,
      explain:
        'Weight sets the fall, pace keeps it down or lifts it. Four times the weight falls twice as fast. Some guides want a slow fall, some a heavy jig they feel.'
    });
  }
};

const OFF_COUNT = {
  light: () => 'Too light: it’s still falling when your count is up.',
  heavy: (least_s: number) => `Too heavy: it’s down before you count ${least_s}.`
} as const;
const OFF_PACE: Record<Want, Record<'light' | 'good' | 'heavy', string>> = {
  down: {
    light: 'Too light for your count, and swept that fast it leaves the bottom.',
    good: 'It falls in your count, but swept that fast it leaves the bottom.',
    heavy: 'Too heavy for your count, and that’s too fast for a drag.'
  },
  hop: {
    light: 'Too light for your count, and that slow it only drags.',
    good: 'It falls in your count, but swept that slow it only drags.',
    heavy: 'Too heavy for your count, and swept that slow it only drags.'
  }
};

export const plans = [weightAndPace];
