import type { Random } from '../../../model';
import type { ShownRun } from '../../lesson';
import { dealt, drawFall, ft, pick, saidLine, several } from '../draw';
import type { Generator } from '../generator';
import { fallToBottom } from '../moves';
import { nominalOf } from '../measure';
import { saidFall, saidOut, saidWeight } from '../said';
import { chooseScaled } from '../scaled-item';
import { chooseValue, markValue } from '../value-item';

/** Falls that a skirt nobody knows cannot turn into one another: so many times as long, at least. A design value. */
const TIMES_APART = 1.7;
/** And falls that anyone might take for one another: no neighbor more than so many times as long. A design value. */
const TIMES_ALIKE = 2.4;
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

/** Three jigs about to fall, none nearly as long as another nor far longer, shortest first; null where none were drawn. */
function fallsApart(random: Random) {
  const apart: (ReturnType<typeof drawFall> & { run: ShownRun; fall_s: number })[] = [];
  for (let drawn = 0; drawn < MOST_DRAWN; drawn++) {
    const one = drawFall(random, FALL_COUNT_FT);
    const run = fallToBottom(one.setup);
    const fall_s = nominalOf(run, 'fall_s');
    const timesOf = (other: number) => Math.max(fall_s / other, other / fall_s);
    if (apart.every((other) => timesOf(other.fall_s) >= TIMES_APART))
      apart.push({ ...one, run, fall_s });
    if (apart.length < PLACES.length) continue;
    apart.sort((a, b) => a.fall_s - b.fall_s);
    const isAlike = apart
      .slice(1)
      .every((longer, i) => longer.fall_s <= TIMES_ALIKE * apart[i].fall_s);
    return isAlike ? apart : null;
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
const TIMED = KNOWN_FT.flatMap((feet) =>
  DEEPER.map((times) => ({ feet, times, there: Math.round(feet * times) }))
);
const DEPTHS_FT = [...new Set(TIMED.map(({ there }) => there))];
/** Depths that a count tells apart: so many times as deep, at least. A design value. */
const TIMES_AS_DEEP = 1.3;

const countToDepth: Generator = {
  id: 'count-to-depth',
  kind: 'choose',
  objective: 'fall-count',
  make: (random, share) => {
    // Three depths stand to be chosen from, and each is asked about as often: none is right by itself.
    const depths = several(random, DEPTHS_FT, PLACES.length).sort((a, b) => a - b);
    if (depths.slice(1).some((deep, i) => deep < TIMES_AS_DEEP * depths[i])) return null;
    const at = PLACES.indexOf(dealt(share, PLACES));
    const there = depths[at];
    const { feet, times } = pick(
      random,
      TIMED.filter((one) => one.there === there)
    );
    const { setup, trailer } = drawFall(random, [feet]);
    const run = (deep: number) =>
      fallToBottom({ ...setup, water: { ...setup.water, depth_m: ft(deep) } });
    const count = (deep: number) => Math.round(nominalOf(run(deep), 'fall_s'));
    const known = count(feet);
    const now = count(there);
    // A light jig that is not down within the longest fall that is shown has no count.
    if (!Number.isFinite(known) || !Number.isFinite(now)) return null;
    // Where it falls a foot a second, the count itself is the depth, and nothing has to be worked out.
    if (Math.abs(there - now) <= 1) return null;
    // Twice as long is twice exactly, or the sum is not seen at a glance.
    if (times === 2 && now !== 2 * known) return null;
    // Whoever does the sum gets the depth that is right, to half a foot.
    if (Math.abs((feet * now) / known - there) > 0.5) return null;
    const a_second = feet / known;
    return chooseScaled({
      ask: `You timed your ${saidWeight(setup.bait.mass_kg)} jig with ${trailer.says} on ${saidLine(setup)}: ${known} seconds to bottom in ${saidOut(ft(feet))}. Now you count ${now}. About how deep is it here?`,
      measure: 'fall_s',
      unknowns: 'drag',
      known: { caption: `The drop you timed, ${saidOut(ft(feet))}`, run: run(feet), value: known },
      given: now,
      options: depths.map((deep, i) => ({
        id: `d${deep}`,
        says: saidOut(ft(deep)),
        reply:
          i === at
            ? 'Right. Same jig, same line, same speed.'
            : whyNotSoDeep(deep, { feet, more: now - known, a_second, places: i - at }),
        run: run(deep)
      })),
      explain: `Depth goes with the count: ${now} seconds is ${now === known * times ? '' : 'about '}${TIMES_SAID[times]} the ${known} you timed, so it’s ${TIMES_SAID[times]} as deep.`
    });
  }
};

interface Counted {
  /** Depth that was timed, ft, and what is counted now beyond its count, s. */
  feet: number;
  more: number;
  /** How fast it falls, ft/s. */
  a_second: number;
  /** How many of the depths lie between, with the sign. */
  places: number;
}

function whyNotSoDeep(deep: number, { feet, more, a_second, places }: Counted): string {
  if (deep === feet) return 'That’s the depth you timed, and this count ran longer.';
  if (deep < feet) return 'Less than the depth you timed, and this count ran longer.';
  const given = (deep - feet) / more;
  // What comes of giving each extra second a foot, or two.
  if ((given === 1 || given === 2) && Math.round(4 * a_second) !== 4 * given)
    return `Too ${places > 0 ? 'deep' : 'shallow'}: that gives the ${more} extra seconds ${saidFall(ft(given))} each. Yours falls about ${saidFall(ft(a_second))} a second.`;
  if (places === 2) return 'Far too deep: you’d still be counting.';
  if (places === 1) return 'Too deep: that takes a longer count.';
  return places === -1
    ? 'Too shallow: it would have been down sooner.'
    : 'Far too shallow: it would have been down long before.';
}

const markFall: Generator = {
  id: 'mark-fall',
  kind: 'mark',
  objective: 'fall-count',
  make: (random) => {
    const { setup, trailer } = drawFall(random);
    const { depth_m } = setup.water;
    const fall_s = nominalOf(fallToBottom(setup), 'fall_s');
    return markValue({
      random,
      ask: `A ${saidWeight(setup.bait.mass_kg)} jig with ${trailer.says} hits the water over ${saidOut(depth_m)}, free spool, ${saidLine(setup)}. Mark how many seconds it falls.`,
      caption: 'The fall',
      run: fallToBottom(setup),
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

export const fallCounts = [fallCount, countToDepth, markFall];
