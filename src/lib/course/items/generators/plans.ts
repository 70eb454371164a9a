import { OFF_BOTTOM_M, type GroundKind } from '../../../model';
import { drawGear, ft, inch, oz, pick, several } from '../draw';
import type { Generator } from '../generator';
import { onlyGood, type Plan } from '../limits-item';
import { measured } from '../measure';
import { fall, shownDrag } from '../moves';
import { saidFeet, saidOut, saidSeconds, saidWeight } from '../said';

const WAY_FT = 2;
const BOTTOMS = ['mud', 'sand', 'clay'] as const satisfies readonly GroundKind[];

/** Longer than a jig of this weight falls on any of the lines, s: an ounce needs 2 s a metre. */
const longest = (depth_m: number, ounces: number) => 2 + (2.6 * depth_m) / Math.sqrt(ounces);
const BOX_OZ = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1];

/** What was timed, what is too light, and what is right: places in the box, each one above the one before. */
const STEPS = [
  [0, 1, 3],
  [0, 0, 2],
  [1, 2, 4],
  [1, 1, 3],
  [2, 2, 5],
  [2, 3, 5]
] as const;

const weightAndPace: Generator = {
  id: 'weight-and-pace',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random) => {
    const setup = drawGear(random, { cast_m: ft(pick(random, [30, 40])), slack_m: inch(1) });
    const { depth_m } = setup.water;
    const [timed, light, good] = pick(random, STEPS).map((i) => BOX_OZ[i]);
    const [slow_s, quick_s] = [pick(random, [3, 4, 5]), pick(random, [0.4, 0.5])];
    const bottom = { ground: { kind: pick(random, BOTTOMS), seed: 11 } };

    const withWeight = (ounces: number) => ({
      ...setup,
      bait: { ...setup.bait, mass_kg: oz(ounces) }
    });
    const falling = (ounces: number) => fall(withWeight(ounces), longest(depth_m, ounces));
    const count = (ounces: number) =>
      Math.round(measured(falling(ounces), 'fall_s', 'drag').nominal);
    const within_s = count(good) + 1;

    const plan = (ounces: number, pace_s: number, reply: string): Plan => {
      const name = `${saidWeight(oz(ounces))}, dragged in ${saidSeconds(pace_s)}`;
      const dragged = { ...withWeight(ounces), bottom };
      return {
        id: `w${ounces * 8}-s${pace_s * 10}`,
        says: name,
        reply,
        runs: [
          { caption: `${saidWeight(oz(ounces))}: the fall`, run: falling(ounces) },
          { caption: name, run: shownDrag(dragged, ft(WAY_FT), pace_s) }
        ]
      };
    };
    return onlyGood({
      ask: `${saidOut(depth_m)} of water over ${bottom.ground.kind}. You timed ${saidWeight(oz(timed))} here: ${count(timed)} seconds down. Now you want to be down within ${within_s}, then stay down while you drag it ${saidFeet(WAY_FT)}, ${saidOut(setup.start.bait_x_m)} out. What do you tie on, and how fast?`,
      timed: {
        caption: `${saidWeight(oz(timed))}: the fall you timed`,
        run: falling(timed),
        fall_s: count(timed)
      },
      limits: [
        { measure: 'fall_s', unknowns: 'drag', most: within_s },
        { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M }
      ],
      plans: [
        plan(good, slow_s, ''),
        // Two of three wrong ones: neither the weight nor the pace that stands there twice is always right.
        ...several(
          random,
          [
            plan(light, slow_s, 'Too light: it’s still falling when your time is up.'),
            plan(good, quick_s, 'It’s down in time, but at that pace it leaves the bottom.'),
            plan(light, quick_s, 'Too light for your count, and too quick to stay down.')
          ],
          2
        )
      ],
      right: 'Right. Down in time, and slow enough to stay there.',
      explain:
        'Enough weight to be down when you want it, then a pace it can stay down at. Some guides go lighter for the slow fall, some heavier for the feel.'
    });
  }
};

export const plans = [weightAndPace];
