import { GRAVITY_M_S2 } from '../../../model';
import { depth, drawGear, ft, oz, pick, several, shuffled, timeToken, weightToken } from '../draw';
import type { Generator } from '../generator';
import { fall } from '../moves';
import { lastWithin } from '../limit-item';
import { measured } from '../measure';
import { chooseBy, orderBy } from '../rank-item';
import { chooseValue, markValue } from '../value-item';

/** Longer than any fall through this depth, s: the slowest of these jigs needs 4 s a metre. */
const longest = (depth_m: number) => 6 + 4 * depth_m;
const inAir = (depth_m: number) => Math.sqrt((2 * depth_m) / GRAVITY_M_S2);

const fallCount: Generator = {
  id: 'fall-count',
  kind: 'choose',
  objective: 'fall-count',
  make: (random) => {
    const setup = drawGear(random);
    const { depth_m } = setup.water;
    return chooseValue({
      ask: `A jig of ${weightToken(setup.bait.mass_kg)} falls on an open spool through ${depth(depth_m)} of water. How long until it is down?`,
      caption: 'The fall',
      run: fall(setup, longest(depth_m)),
      measure: 'fall_s',
      unknowns: 'drag',
      right: 'Yes. Three timed drops in a known depth give you your own figure.',
      explain:
        'A jig soon falls at an even pace, which goes with the square root of its weight; the line it draws along slows it further.',
      errors: (key) => [
        {
          id: 'in-air',
          value: inAir(depth_m),
          reply:
            'So fast it falls in air. In water it soon stops gaining speed, and it draws the line along.'
        },
        {
          id: 'too-long',
          value: key * 2.2,
          reply:
            'A leaf would take so long. Waiting on a bait that lies there already costs you bites on the fall.'
        },
        {
          id: 'short',
          value: key / 2.4,
          reply: 'The line slows it: closing the bail that early swings the bait towards you.'
        }
      ],
      says: (s) => timeToken(s)
    });
  }
};

const countToDepth: Generator = {
  id: 'count-to-depth',
  kind: 'choose',
  objective: 'fall-count',
  make: (random) => {
    // The right one is the shallowest or the middle one: there must be one that is too deep.
    const place = random() < 0.5 ? 0 : 1;
    const feet = place === 0 ? [7, 9, 11] : [12, 15, 18];
    const setup = drawGear(random, { depth_m: ft(pick(random, feet)) });
    const { depth_m } = setup.water;

    const at = (there: number, hold_s: number) =>
      fall({ ...setup, water: { ...setup.water, depth_m: there } }, hold_s);
    const fallen = measured(at(depth_m, longest(depth_m)), 'fall_s', 'drag');
    const count_s = Math.round(1.03 * Math.max(...fallen.corners));
    // What is not down well after the count need not be followed further.
    const depths = [0, 1, 2].map((i) => depth_m * 2.6 ** (i - place));
    const contenders = depths.map((there, i) => ({
      id: `step-${i + 1}`,
      says: depth(there),
      run: at(there, count_s + 2)
    }));
    return lastWithin({
      ask: `A jig of ${weightToken(setup.bait.mass_kg)} falls on an open spool. You have counted ${timeToken(count_s)} and the line goes slack. Which is the deepest of these that it can have reached?`,
      measure: 'fall_s',
      unknowns: 'drag',
      most: count_s,
      contenders,
      right: 'Yes: the count and the pace of the fall give the depth.',
      timid: 'It gets deeper than that in this time.',
      bold: 'It cannot be down there yet. A line that goes slack early has met a ledge, a fish, or your finger.',
      explain:
        'Pace times count is depth. Calibrate the pace with three timed drops where you know the depth.'
    });
  }
};

const orderWeightsByFall: Generator = {
  id: 'order-weights-fall',
  kind: 'order',
  objective: 'weight-depth',
  make: (random) => {
    const setup = drawGear(random, { depth_m: ft(pick(random, [12, 16, 20, 25])) });
    const weights = several(random, [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1], 3);
    return orderBy({
      ask: `Three jigs with the same skirt fall through ${depth(setup.water.depth_m)} of water. Put the slowest first.`,
      rule: 'slowest first',
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: shuffled(random, weights).map((ounces) => ({
        id: `w${ounces * 8}`,
        says: weightToken(oz(ounces)),
        run: fall(
          { ...setup, bait: { ...setup.bait, mass_kg: oz(ounces) } },
          longest(setup.water.depth_m)
        )
      })),
      right: 'Yes: lighter is slower.',
      reversed: 'That is the other way round: weight is what draws it down.',
      other: 'Skirt and shape are the same, so only the weight decides.',
      explain:
        'The pace of a fall goes with the square root of the weight: four times the weight is twice the pace.'
    });
  }
};

const trailers: Generator = {
  id: 'trailer-fall',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random) => {
    const setup = drawGear(random);
    const sizes = [
      {
        id: 'bare',
        says: 'no trailer',
        area: 3e-4,
        reply: 'A bare jig meets the least water and falls fastest.'
      },
      {
        id: 'small',
        says: 'a small trailer',
        area: 7e-4,
        reply: 'There is one of the three that meets more water.'
      },
      {
        id: 'large',
        says: 'a large trailer',
        area: 16e-4,
        reply: 'A large trailer adds hardly any weight, but much water to push aside: it brakes.'
      }
    ];
    const want = pick(random, ['most', 'least'] as const);
    return chooseBy({
      ask: `The same jig of ${weightToken(setup.bait.mass_kg)} in ${depth(setup.water.depth_m)} of water, with three trailers. With which does it fall ${want === 'most' ? 'slowest' : 'fastest'}?`,
      pick: want,
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: shuffled(random, sizes).map(({ id, says, area, reply }) => ({
        id,
        says,
        reply,
        run: fall(
          { ...setup, bait: { ...setup.bait, drag_area_m2: area } },
          longest(setup.water.depth_m)
        )
      })),
      right: 'Yes. What slows a fall is the water it has to push aside.',
      explain: 'To slow a fall without losing contact, add trailer rather than take off weight.'
    });
  }
};

const markFall: Generator = {
  id: 'mark-fall',
  kind: 'mark',
  objective: 'fall-count',
  make: (random) => {
    const setup = drawGear(random, { depth_m: ft(pick(random, [10, 15, 20, 30])) });
    const { depth_m } = setup.water;
    return markValue({
      ask: `A jig of ${weightToken(setup.bait.mass_kg)} meets the water over ${depth(depth_m)}, the spool is open. Mark how many seconds it falls.`,
      caption: 'The fall',
      run: fall(setup, longest(depth_m)),
      measure: 'fall_s',
      unknowns: 'drag',
      right: 'Yes, within what skirt and trailer leave open.',
      explain:
        'The band is wide, because nobody knows a skirt’s drag better than to a factor of two: time three drops of your own.',
      errors: (key) => [
        {
          id: 'in-air',
          value: inAir(depth_m),
          reply: 'So fast it falls in air. Water and line slow it.'
        },
        { id: 'too-long', value: 2 * key, reply: 'It has been lying there for as long again.' }
      ],
      other: 'A jig of this weight falls about a foot and a half a second, slower when it is light.'
    });
  }
};

export const falls = [fallCount, countToDepth, orderWeightsByFall, trailers, markFall];
