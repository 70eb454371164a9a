import type { Random, SetupInput } from '../../../model';
import type { ShownRun } from '../../lesson';
import {
  dealt,
  drawFall,
  ft,
  oz,
  pick,
  saidLine,
  several,
  shuffled,
  TIED_ON,
  isFished
} from '../draw';
import type { Generator } from '../generator';
import { fall } from '../moves';
import { nominalOf } from '../measure';
import { chooseBy, orderBy } from '../rank-item';
import { saidFall, saidOut, saidWeight } from '../said';
import { chooseScaled } from '../scaled-item';
import { chooseValue, markValue } from '../value-item';

/** Longer than any fall of such a jig through this depth on any of the lines, s: an ounce needs 2 s a metre. */
function longest({ water, bait }: SetupInput): number {
  return 3 + (2.6 * water.depth_m) / Math.sqrt(bait.mass_kg / oz(1));
}
const falling = (setup: SetupInput) => fall(setup, longest(setup));

/** Falls that a skirt nobody knows cannot turn into one another: so many times as long, at least. A design value. */
const TIMES_APART = 1.7;
const PLACES = ['shortest', 'middle', 'longest'] as const;

/** Why a fall is wrong that stands so many places above the right one, or below it. */
const WHY_NOT: Readonly<Record<number, string>> = {
  [-2]: 'Far too soon: it isn’t halfway down by then.',
  [-1]: 'Too soon. Engage the reel then and it swings in on you.',
  1: 'Too many. It’s down by then, and lies there while you count.',
  2: 'It’s been sitting there most of that time. You’d miss what picked it up.'
};

/** Depths enough for over 200 different questions: short falls and long ones are few. */
const FALL_COUNT_FT = [
  8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 20, 22, 24, 26, 28, 30, 32, 33, 34, 35
];
/** Jigs drawn to find three whose falls are apart. */
const MOST_DRAWN = 12;

/** Three jigs about to fall, none nearly as long as another, shortest first; null where none were drawn. */
function fallsApart(random: Random) {
  const apart: (ReturnType<typeof drawFall> & { run: ShownRun; fall_s: number })[] = [];
  for (let drawn = 0; drawn < MOST_DRAWN; drawn++) {
    const one = drawFall(random, FALL_COUNT_FT);
    const run = falling(one.setup);
    const fall_s = nominalOf(run, 'fall_s');
    const timesOf = (other: number) => Math.max(fall_s / other, other / fall_s);
    if (apart.every((other) => timesOf(other.fall_s) >= TIMES_APART))
      apart.push({ ...one, run, fall_s });
    if (apart.length === PLACES.length) return apart.sort((a, b) => a.fall_s - b.fall_s);
  }
  return null;
}

const fallCount: Generator = {
  id: 'fall-count',
  kind: 'choose',
  objective: 'fall-count',
  make: (random, share) => {
    // Three jigs' falls stand to be chosen from, and each is asked about as often: no number is right by itself.
    const falls = fallsApart(random);
    if (falls === null) return null;
    const at = PLACES.indexOf(dealt(share, PLACES));
    const { setup, trailer, run, fall_s } = falls[at];
    const { depth_m } = setup.water;
    return chooseValue({
      ask: `${saidOut(depth_m)} of water, free spool. A ${saidWeight(setup.bait.mass_kg)} jig with ${trailer.says} on ${saidLine(setup)}. About how long is the fall?`,
      caption: 'The fall',
      run,
      measure: 'fall_s',
      unknowns: 'drag',
      isByShare: true,
      right: 'Right. Three timed drops give you your own number.',
      explain: `It gets to one even speed right away, this one about ${saidFall(depth_m / fall_s)} a second. Weight, skirt and trailer set it.`,
      errors: () =>
        falls.flatMap(({ fall_s: value }, i) =>
          i === at ? [] : [{ id: PLACES[i], value, reply: WHY_NOT[i - at] }]
        ),
      says: (s) => `about ${Math.round(s)} seconds`
    });
  }
};

/** What was timed: a usual depth of water near the ramp, ft. */
const KNOWN_FT = [8, 10, 12, 15];
const DEEPER = [1.5, 1.75, 2, 2.5] as const;
const TIMES_SAID = { 1.5: '1½ times', 1.75: '1¾ times', 2: 'twice', 2.5: '2½ times' } as const;

const countToDepth: Generator = {
  id: 'count-to-depth',
  kind: 'choose',
  objective: 'fall-count',
  make: (random, share) => {
    const { setup, trailer, feet } = drawFall(random, KNOWN_FT);
    const times = pick(random, DEEPER);
    const there = Math.round(feet * times);
    const run = (deep: number) =>
      falling({ ...setup, water: { ...setup.water, depth_m: ft(deep) } });
    const count = (deep: number) => Math.round(nominalOf(run(deep), 'fall_s'));
    const known = count(feet);
    const now = count(there);
    // A light jig that is not down within the longest fall that is shown has no count.
    if (!Number.isFinite(known) || !Number.isFinite(now)) return null;
    // Where it falls a foot a second, the count itself is the depth, and nothing has to be worked out.
    if (Math.abs(there - now) <= 1) return null;
    // Whoever does the sum gets the depth that is right, to half a foot.
    if (Math.abs((feet * now) / known - there) > 0.5) return null;
    const atPace = (deep: number, a_second: number) =>
      `Too ${deep > there ? 'deep' : 'shallow'}: that gives the ${now - known} extra seconds ${saidFall(ft(a_second))} each. Yours falls about ${saidFall(ft(feet / known))} a second.`;
    const options = [
      { deep: there, reply: 'Right. Same jig, same line, same speed.' },
      // Where it falls about as fast as that, the reply would gainsay itself.
      ...[1, 2]
        .filter((pace) => Math.round((4 * feet) / known) !== 4 * pace)
        .map((pace) => feet + pace * (now - known))
        .map((deep) => ({ deep, reply: atPace(deep, (deep - feet) / (now - known)) })),
      {
        deep: Math.round(there * 1.7),
        reply: 'Too deep: you’d still be counting.'
      },
      {
        deep: Math.round(there * 1.35),
        reply: 'A bit too deep: that takes a longer count.'
      },
      {
        deep: Math.round(there * 0.7),
        reply: 'Too shallow: it would have been down sooner.'
      },
      { deep: feet, reply: 'That’s the depth you timed, and this count ran longer.' }
    ].filter(({ deep }, i, all) => all.findIndex((other) => other.deep === deep) === i);
    const [right, ...wrong] = options;
    // The right one is the least, the middle one or the greatest, each as often.
    const lower = dealt(share, [0, 1, 2]);
    const beside = [
      ...shuffled(
        random,
        wrong.filter(({ deep }) => deep < there)
      ).slice(0, lower),
      ...shuffled(
        random,
        wrong.filter(({ deep }) => deep > there)
      ).slice(0, 2 - lower)
    ];
    if (beside.length < 2) return null;
    return chooseScaled({
      ask: `You timed your ${saidWeight(setup.bait.mass_kg)} jig with ${trailer.says} on ${saidLine(setup)}: ${known} seconds to bottom in ${saidOut(ft(feet))}. Now you count ${now}. About how deep is it here?`,
      measure: 'fall_s',
      unknowns: 'drag',
      known: { caption: `The drop you timed, ${saidOut(ft(feet))}`, run: run(feet), value: known },
      given: now,
      options: [right, ...beside].map(({ deep, reply }) => ({
        id: `d${deep}`,
        says: saidOut(ft(deep)),
        reply,
        run: run(deep)
      })),
      explain: `Depth goes with the count: ${now} seconds is ${now === known * times ? '' : 'about '}${TIMES_SAID[times]} the ${known} you timed, so it’s ${TIMES_SAID[times]} as deep.`
    });
  }
};

const orderWeightsByFall: Generator = {
  id: 'order-weights-fall',
  kind: 'order',
  objective: 'weight-depth',
  make: (random) => {
    const { setup, trailer } = drawFall(random);
    const ounces = shuffled(random, several(random, [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1], 3));
    const depths = shuffled(random, several(random, [8, 12, 16, 20, 24, 30], 3));
    if (ounces.some((weight, i) => !isFished(weight, depths[i]))) return null;
    return orderBy({
      ask: `Three drops on free spool, each with ${trailer.says}, on ${saidLine(setup)}. Which takes longest to hit bottom? Longest first.`,
      rule: 'longest fall first',
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: ounces.map((weight, i) => ({
        id: `w${weight * 8}-d${depths[i]}`,
        says: `${saidWeight(oz(weight))} in ${saidOut(ft(depths[i]))}`,
        printed: [weight, depths[i]],
        run: falling({
          ...setup,
          water: { ...setup.water, depth_m: ft(depths[i]) },
          bait: { ...setup.bait, mass_kg: oz(weight) }
        })
      })),
      right: 'Right. Deeper takes longer, and so does lighter.',
      reversed: 'That’s shortest first: deep and light take longest.',
      other: 'Weigh one against the other: deeper takes longer, and so does lighter.',
      explain: 'Twice the depth takes twice the count. Four times the weight takes half the count.'
    });
  }
};

interface Tied {
  ounces: number;
  trailer: (typeof TIED_ON)[number];
}

/** Why a jig of another weight falls otherwise than the right one, as nobody else hears it. */
function besideTheRight(one: Tied, right: Tied, isSooner: boolean): string {
  const isHeavier = one.ounces > right.ounces;
  const isBigger = one.trailer.drag_area_m2 > right.trailer.drag_area_m2;
  const weights = `${saidWeight(oz(one.ounces))} is ${isHeavier ? 'heavier' : 'lighter'} than ${saidWeight(oz(right.ounces))}`;
  if (one.trailer === right.trailer)
    return `${weights}, with the same trailer: it’s down ${isHeavier ? 'sooner' : 'later'}.`;
  const trailer = `its trailer is ${isBigger ? 'bigger' : 'smaller'}`;
  if (isHeavier !== isBigger)
    return `${weights}, and ${trailer}: both get it down ${isHeavier ? 'sooner' : 'later'}.`;
  const isByWeight = isSooner === isHeavier;
  return `${weights}, and ${trailer}: the ${isByWeight ? 'weight' : 'trailer'} wins, so it falls ${isSooner ? 'sooner' : 'later'}.`;
}

/**
 * What falls fastest or slowest of some three, each asked for as often, so that none of them is right by
 * itself. Between 3/8 oz with a small trailer and its neighbors no third is far enough.
 */
const TIED = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1]
  .flatMap((ounces) => TIED_ON.map((trailer): Tied => ({ ounces, trailer })))
  .filter(({ ounces, trailer }) => ounces !== 3 / 8 || trailer !== TIED_ON[0]);
/** Light with a big trailer is slowest, heavy with a small one fastest: little to weigh up, so asked less. */
const PLAIN_SHARE = 0.25;

const trailers: Generator = {
  id: 'trailer-fall',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random, share) => {
    const { setup } = drawFall(random, [14, 18, 22, 26, 30, 34]);
    const best = dealt(share, TIED);
    const others = TIED.filter((one) => one !== best);
    const drawn = [best, ...several(random, others, 2)];
    if (new Set(drawn.map(({ ounces }) => ounces)).size < drawn.length) return null;
    if (new Set(drawn.map(({ trailer }) => trailer)).size === 1) return null;
    const idOf = ({ ounces, trailer }: Tied) =>
      `w${ounces * 8}-${trailer.says.replaceAll(' ', '-')}`;
    const run = ({ ounces, trailer: { drag_area_m2 } }: Tied) =>
      falling({ ...setup, bait: { mass_kg: oz(ounces), drag_area_m2 } });
    const [best_s, ...rest_s] = drawn.map((one) => nominalOf(run(one), 'fall_s'));
    const isSlowest = rest_s.every((one_s) => one_s < best_s);
    if (!isSlowest && rest_s.some((one_s) => one_s <= best_s)) return null;
    const isPlain = isSlowest
      ? best.trailer === TIED_ON[1] && drawn.every(({ ounces }) => ounces >= best.ounces)
      : best.trailer === TIED_ON[0] && drawn.every(({ ounces }) => ounces <= best.ounces);
    if (isPlain && random() > PLAIN_SHARE) return null;
    return chooseBy({
      ask: `${saidOut(setup.water.depth_m)} of water, free spool, ${saidLine(setup)}. Which falls ${isSlowest ? 'slowest' : 'fastest'}?`,
      pick: isSlowest ? 'most' : 'least',
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: shuffled(random, drawn).map((one) => ({
        id: idOf(one),
        says: `${saidWeight(oz(one.ounces))} with ${one.trailer.says}`,
        reply: () => besideTheRight(one, best, isSlowest),
        run: run(one)
      })),
      right: 'Right. Weight pulls it down, and the trailer holds it back.',
      explain:
        // By the two trailers' sizes, 1.9 to 1: no two weights of the box lie between.
        'Twice the weight more than makes up for a big trailer. Half again as much doesn’t.'
    });
  }
};

const markFall: Generator = {
  id: 'mark-fall',
  kind: 'mark',
  objective: 'fall-count',
  make: (random) => {
    const { setup, trailer } = drawFall(random);
    const { depth_m } = setup.water;
    const fall_s = nominalOf(falling(setup), 'fall_s');
    return markValue({
      random,
      ask: `A ${saidWeight(setup.bait.mass_kg)} jig with ${trailer.says} hits the water over ${saidOut(depth_m)}, free spool, ${saidLine(setup)}. Mark how many seconds it falls.`,
      caption: 'The fall',
      run: falling(setup),
      measure: 'fall_s',
      unknowns: 'drag',
      right: 'Right, within what a skirt and trailer leave open.',
      explain:
        'Weight, skirt and trailer set it, and skirts differ a lot: so the band is wide. Time three drops of your own.',
      errors: (key) => [
        {
          id: 'too-short',
          value: key / 3,
          reply: WHY_NOT[-1]
        },
        {
          id: 'too-long',
          value: 2 * key,
          reply: 'It’s been on bottom for half of that.'
        }
      ],
      other: `This one falls about ${saidFall(depth_m / fall_s)} a second, and it has ${saidOut(depth_m)} to go.`
    });
  }
};

export const falls = [fallCount, countToDepth, orderWeightsByFall, trailers, markFall];
