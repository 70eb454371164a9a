import { OFF_BOTTOM_M, type GroundKind } from '../../../model';
import { depth, drawGear, ft, inch, lengthToken, oz, pick, timeToken, weightToken } from '../draw';
import type { Generator } from '../generator';
import { onlyGood, type Plan } from '../limits-item';
import { measured } from '../measure';
import { shownDrag, fall } from '../moves';

const WAY_M = ft(2);
const BOTTOMS = ['mud', 'sand', 'clay'] as const satisfies readonly GroundKind[];

/** Longer than a jig of this weight falls on any of the lines, s: an ounce needs 2 s a metre. */
const longest = (depth_m: number, ounces: number) => 2 + (2.6 * depth_m) / Math.sqrt(ounces);

interface Tried {
  ounces: number;
  pace_s: number;
  reply: string;
}

const SLOW_LIGHT: Tried = {
  ounces: 1 / 4,
  pace_s: 4,
  reply: 'So light it needs longer to the bottom than you give it here.'
};
const quick = (ounces: number, pace_s: number): Tried => ({
  ounces,
  pace_s,
  reply: 'It is down in time, but at this pace it leaves the bottom, heavy or not.'
});

const weightAndPace: Generator = {
  id: 'weight-and-pace',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random) => {
    const setup = drawGear(random, { cast_m: ft(pick(random, [32, 38])), slack_m: inch(1) });
    const { depth_m } = setup.water;
    const kind = pick(random, BOTTOMS);
    const heavy: Tried = { ounces: 1, pace_s: pick(random, [2.5, 3]), reply: '' };
    // With time for the lightest to fall it is the pace that decides; in a hurry it is both.
    const inHurry = random() < 0.5;
    const best = inHurry ? heavy : SLOW_LIGHT;
    const tried = inHurry
      ? [SLOW_LIGHT, heavy, quick(1, 0.5)]
      : [SLOW_LIGHT, quick(1 / 2, 0.6), quick(1, 0.4)];

    const falling = (ounces: number, hold_s: number) =>
      fall({ ...setup, bait: { ...setup.bait, mass_kg: oz(ounces) } }, hold_s);
    const down = measured(falling(best.ounces, longest(depth_m, best.ounces)), 'fall_s', 'drag');
    const within_s = Math.ceil(Math.max(down.nominal, ...down.corners));
    if (!Number.isFinite(within_s)) return null;

    const plans = tried.map(({ ounces, pace_s, reply }): Plan => {
      const name = `${weightToken(oz(ounces))}, dragged in ${timeToken(pace_s)}`;
      const bottom = { ground: { kind, seed: 11 } };
      const there = { ...setup, bottom, bait: { ...setup.bait, mass_kg: oz(ounces) } };
      // What is not down well after that need not be followed further.
      const most_s = ounces === best.ounces ? Infinity : within_s + 2;
      const hold_s = Math.min(longest(depth_m, ounces), most_s);
      return {
        id: `w${ounces * 8}-s${pace_s * 10}`,
        says: name,
        reply,
        runs: [
          { caption: `${weightToken(oz(ounces))}: the fall`, run: falling(ounces, hold_s) },
          { caption: name, run: shownDrag(there, WAY_M, pace_s) }
        ]
      };
    });
    return onlyGood({
      ask: `${depth(depth_m)} of water over ${kind}. The jig shall be down within ${timeToken(within_s)} on an open spool, and stay on the bottom while you drag it ${lengthToken(WAY_M)}, ${depth(setup.start.bait_x_m)} out. Which weight, and how fast?`,
      limits: [
        { measure: 'fall_s', unknowns: 'drag', most: within_s },
        { measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M }
      ],
      plans,
      right: 'Yes: down in time, and slow enough to stay there.',
      explain:
        'Weight buys a quick fall and some speed along the bottom. As light as the count allows, as fast as it stays down.'
    });
  }
};

export const plans = [weightAndPace];
