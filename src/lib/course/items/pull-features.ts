import type { Trace } from '../../model';

/**
 * What can be seen in a chart of the pull at the tip, and nothing else: decided from the drawn signal alone,
 * for one even drag of a line close to tight. Of bottoms that are taken for one another a chart shows one
 * feature. All limits are design values, in parts of the drawing's height and in seconds on its axis.
 */
type Signal = Pick<Trace, 't_s' | 'tip_tension_N'>;

/** One load of the line: the pull rises, and falls again. */
interface Load {
  /** How long it is above half of what it rises by, s. */
  lasts_s: number;
  /** Above the higher one of what is before and after it. */
  rises: number;
}

/** A rise and fall of less is a ripple that nobody takes for a load. */
const SEEN = 0.15;
/** One of which is counted as a knock among smaller ones. */
const KNOCKS = 0.25;
const MANY = 10;
/** What is heard as a tick is no longer; what loads is longer. */
const TICK_S = 0.4;
const LOAD_S = 0.8;
/** Until then the jig is got under way, s. */
const BEGUN_S = 1.5;
/** Pull that starts a jig, beside what keeps it going. */
const STUCK = 1.6;
/** Pull that nobody sees stand above an even line. */
const FLAT = 1.1;
/** An even line keeps within this part of its own height. */
const EVEN = 0.2;

export const PULL_FEATURES = {
  'many ticks': (signal) => ticks(signal) >= MANY && longestHigh(signal) < LOAD_S,
  'uneven knocks': (signal) => {
    const knocks = knocksOf(signal);
    return knocks >= 4 && knocks < MANY && longestHigh(signal) < LOAD_S;
  },
  'long load, then a drop': (signal) =>
    knocksOf(signal) <= 3 && longestHigh(signal) >= LOAD_S && isLetGo(signal),
  'slow loads that slip': (signal) => {
    const long = loadsOf(signal).filter(({ lasts_s }) => lasts_s >= TICK_S);
    return long.length >= 2 && knocksOf(signal) <= 5;
  },
  'catches of any length': (signal) =>
    knocksOf(signal) >= 6 && loadsOf(signal).some(({ lasts_s }) => lasts_s >= TICK_S),
  'short hard catches': (signal) =>
    knocksOf(signal) >= 6 && loadsOf(signal).every(({ lasts_s }) => lasts_s < TICK_S),
  'sticks, then goes even': (signal) =>
    highestIn(signal, 0, BEGUN_S) > STUCK * levelOf(signal) && isEven(signal),
  'even from the start': (signal) =>
    highestIn(signal, 0, BEGUN_S) <= FLAT * levelOf(signal) && isEven(signal),
  'news while the rod is still': (signal) => changeWhileStill(signal) >= NEWS,
  'knocks while the rod is still': (signal) => knocksOf(whileStill(signal)) >= 2,
  'grows while the rod is still': (signal) => {
    const { first, highest } = stillLevels(signal);
    return knocksOf(whileStill(signal)) < 2 && highest - first >= NEWS;
  },
  'goes away while the rod is still': (signal) => {
    const { first, highest, last } = stillLevels(signal);
    return first - last >= NEWS && highest - first < QUIET;
  },
  'knocks, then quiet': (signal) =>
    knocksOf(whileDragged(signal)) >= 2 && isQuietWhileStill(signal),
  'even, then quiet': (signal) => knocksOf(whileDragged(signal)) === 0 && isQuietWhileStill(signal)
} as const satisfies Record<string, (signal: Signal) => boolean>;

export type PullFeature = keyof typeof PULL_FEATURES;
export const PULL_FEATURE_NAMES = Object.keys(PULL_FEATURES) as PullFeature[];

/** In a chart of a drag and a rod held still after it: when the hand stops, and when the line has settled, s. */
export const STOPS_S = 5;
const SETTLED_S = 1;
/** A change of the drawing's height that nobody overlooks, and one that nobody takes for anything. */
const NEWS = 0.2;
const QUIET = 0.1;
/** Beside the drag's own pull: a line that stays loaded more is not at rest. */
const AT_REST = 1.2;

const ticks = (signal: Signal) => loadsOf(signal).length;
const knocksOf = (signal: Signal) => loadsOf(signal).filter(({ rises }) => rises >= KNOCKS).length;

/** The loads that are seen, in their order. */
function loadsOf({ t_s, tip_tension_N: pull }: Signal): Load[] {
  const most = Math.max(...pull);
  return topsOf(pull, SEEN * most).map(({ at, before, after }) => {
    const rise = pull[at] - Math.max(before, after);
    const isHigh = (i: number) => pull[i] > pull[at] - rise / 2;
    let [from, to] = [at, at];
    while (from > 0 && isHigh(from - 1)) from--;
    while (to < pull.length - 1 && isHigh(to + 1)) to++;
    return { lasts_s: t_s[to] - t_s[from], rises: rise / most };
  });
}

/** Highest points, between which the pull falls by `step` and rises by it again, and the lowest beside each. */
function topsOf(pull: readonly number[], step: number) {
  const tops: { at: number; before: number; after: number }[] = [];
  let low = pull[0];
  let high: number | null = null;
  pull.forEach((value, i) => {
    if (high === null) {
      low = Math.min(low, value);
      if (value >= low + step) high = i;
    } else if (value > pull[high]) {
      high = i;
    } else if (value <= pull[high] - step) {
      tops.push({ at: high, before: low, after: value });
      [low, high] = [value, null];
    }
  });
  return tops.map((top, i) => ({
    ...top,
    after: Math.min(...pull.slice(top.at, tops[i + 1]?.at ?? pull.length))
  }));
}

/** The longest stretch above half of the drawing's height, s. */
function longestHigh({ t_s, tip_tension_N: pull }: Signal): number {
  const half = Math.max(...pull) / 2;
  let [longest, from] = [0, 0];
  pull.forEach((value, i) => {
    if (value < half) from = i;
    longest = Math.max(longest, t_s[i] - t_s[from]);
  });
  return longest;
}

/** Whether what was loaded has dropped off before the hand slows down. */
function isLetGo(signal: Signal): boolean {
  const pull = underWay(signal);
  return pull[pull.length - 1] < Math.max(...pull) / 2;
}

const within = ({ t_s, tip_tension_N }: Signal, from_s: number, to_s: number) =>
  tip_tension_N.filter((_, i) => t_s[i] >= from_s && t_s[i] <= to_s);
const highestIn = (signal: Signal, from_s: number, to_s: number) =>
  Math.max(...within(signal, from_s, to_s));

/** From when the jig is under way until the hand slows down. */
function underWay(signal: Signal): number[] {
  return within(signal, BEGUN_S, signal.t_s[signal.t_s.length - 1] - BEGUN_S);
}

function levelOf(signal: Signal): number {
  return medianOf(underWay(signal));
}

function isEven(signal: Signal): boolean {
  const pull = underWay(signal);
  return Math.max(...pull) - Math.min(...pull) < EVEN * levelOf(signal);
}

function medianOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function partOf({ t_s, tip_tension_N }: Signal, from_s: number, to_s: number): Signal {
  const isIn = (_: number, i: number) => t_s[i] >= from_s && t_s[i] <= to_s;
  return { t_s: t_s.filter(isIn), tip_tension_N: tip_tension_N.filter(isIn) };
}
/** The drag alone, under way, and what comes after it once the line has settled. */
const whileDragged = (signal: Signal) => partOf(signal, BEGUN_S, STOPS_S + SETTLED_S);
const whileStill = (signal: Signal) => partOf(signal, STOPS_S + SETTLED_S, Infinity);

/** In parts of the drawing's height. */
function stillLevels(signal: Signal) {
  const most = Math.max(...signal.tip_tension_N);
  const still = whileStill(signal).tip_tension_N.map((pull) => pull / most);
  return { first: still[0], highest: Math.max(...still), last: still[still.length - 1] };
}

function changeWhileStill(signal: Signal): number {
  const still = whileStill(signal).tip_tension_N;
  return (Math.max(...still) - Math.min(...still)) / Math.max(...signal.tip_tension_N);
}

function isQuietWhileStill(signal: Signal): boolean {
  const usual = medianOf(within(signal, BEGUN_S, STOPS_S));
  const loaded = highestIn(signal, STOPS_S + SETTLED_S, Infinity);
  return changeWhileStill(signal) < QUIET && loaded <= AT_REST * usual;
}
