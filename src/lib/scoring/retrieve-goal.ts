import type { Result } from '../model';
import type { Goal, RetrieveGoal } from './challenge';
import { clamped, fading } from './fading';
import {
  countTwitches,
  freedOf,
  furthestFromStart,
  largestSwing,
  meanBaitSpeed,
  pullAtEnd,
  restsBetweenMoves,
  rhythmOf,
  strikeDelay,
  swumShare,
  waitAfterTouch
} from './retrieve-measure';

/** Outside its range by this part of the range's near edge, a pace earns nothing. */
const PACE_REACH_IN_EDGES = 0.5;
const SWIM_REACH = 0.25;
/** A rest of half the length asked earns nothing. */
const REST_REACH = 0.5;
/** Even hops: longest over shortest gap up to this is full; from the other on it is nothing. */
const EVEN_RATIO = 1.5;
const UNEVEN_RATIO = 2.5;
/** Uneven hops: full from here on; nothing for one that is even to a quarter. */
const VARIED_RATIO = 2;
const MONOTONE_RATIO = 1.25;
/** Moved a second before the bait is down: nothing. */
const EARLY_REACH_S = 1;
/** Sooner than this after a bite nobody has felt it: the sweep was a guess, s. */
const REACTION_S = 0.15;

type Rule<G> = {
  value: (goal: G, result: Result) => number;
  share: (goal: G, value: number, result: Result) => number;
};
type Of<K extends RetrieveGoal['kind']> = Extract<RetrieveGoal, { kind: K }>;

const RULES: { [K in RetrieveGoal['kind']]: Rule<Of<K>> } = {
  pace: {
    value: (_, result) => meanBaitSpeed(result),
    share: ({ m_s: [low, high] }, value) =>
      value < low
        ? fading(low - value, PACE_REACH_IN_EDGES * low)
        : fading(value - high, PACE_REACH_IN_EDGES * high)
  },
  swim: {
    value: ({ height_m: [low, high] }, result) => swumShare(result, low, high),
    share: ({ least }, value) => fading(least - value, SWIM_REACH)
  },
  stayed: {
    value: (_, result) => furthestFromStart(result),
    share: ({ most_m }, value) => fading(value - most_m, most_m)
  },
  twitches: {
    value: (_, result) => countTwitches(result),
    share: ({ count }, value) => clamped(value / count)
  },
  rests: {
    value: ({ least_s }, result) =>
      restsBetweenMoves(result).filter((rest_s) => rest_s >= least_s).length,
    share: ({ count, least_s }, _, result) =>
      restsBetweenMoves(result)
        .sort((a, b) => b - a)
        .slice(0, count)
        .reduce((sum, rest_s) => sum + fading(least_s - rest_s, REST_REACH * least_s), 0) / count
  },
  rhythm: {
    value: (_, result) => rhythmOf(result),
    share: ({ even }, value) => {
      if (value === 0) return 0;
      return even
        ? fading(value - EVEN_RATIO, UNEVEN_RATIO - EVEN_RATIO)
        : fading(VARIED_RATIO - value, VARIED_RATIO - MONOTONE_RATIO);
    }
  },
  bottom_first: {
    value: (_, result) => waitAfterTouch(result),
    share: ({ within_s }, value) =>
      value < 0 ? fading(-value, EARLY_REACH_S) : fading(value - within_s, within_s)
  },
  tight: {
    value: (_, result) => pullAtEnd(result),
    share: ({ least_N }, value) => fading(least_N - value, least_N)
  },
  swing: {
    value: (_, result) => largestSwing(result),
    share: ({ most_m }, value) => fading(value - most_m, most_m)
  },
  freed: {
    value: (_, result) => freedOf(result),
    share: (_, value) => value
  },
  strike: {
    value: (_, result) => strikeDelay(result),
    share: ({ within_s }, value) => (value < REACTION_S ? 0 : fading(value - within_s, within_s))
  }
};

export function isRetrieveGoal(goal: Goal): goal is RetrieveGoal {
  return goal.kind in RULES;
}

/** What the try reached, in the goal's own unit. */
export function retrieveValue(goal: RetrieveGoal, result: Result): number {
  return ruleOf(goal).value(goal, result);
}

/** How well the goal was met on its own, 0–1. */
export function retrieveShare(goal: RetrieveGoal, result: Result): number {
  const rule = ruleOf(goal);
  return rule.share(goal, rule.value(goal, result), result);
}

/** Goals that a rod held still would meet. */
export function isStillness({ kind }: RetrieveGoal): boolean {
  return kind === 'stayed' || kind === 'swing';
}

/** Goals that one smooth turn of the rod can meet; the others need several moves, or the right time. */
export function isOfOneTurn({ kind }: RetrieveGoal): boolean {
  return kind === 'pace' || kind === 'stayed' || kind === 'swing';
}

/** Each rule is typed by its own kind of goal; what joins them is the table's key. */
function ruleOf(goal: RetrieveGoal): Rule<RetrieveGoal> {
  return RULES[goal.kind] as Rule<RetrieveGoal>;
}
