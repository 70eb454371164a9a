import { dealt, drawGear, ft, inch, pick, placeWords, shuffled, isCloseIn } from '../draw';
import type { Generator } from '../generator';
import { nominalOf } from '../measure';
import { shownDrag, shownLift } from '../moves';
import { chooseBy, orderBy, type Contender } from '../rank-item';
import { saidFeet, saidHour, saidSeconds } from '../said';
import { isHeightSeenAlike, quickSaid } from './seen-by-guides';

const fromTo = (from: number, to: number) => `${saidHour(from)} to ${saidHour(to)} o’clock`;

/** Nobody takes longer over an hour of the clock, s. */
const SLOWEST_HOUR_S = 4;

interface Paced {
  to: number;
  s: number;
}

/** What settles which of two lifts goes higher, with the higher one first. */
function settledBy(high: Paced, low: Paced): string {
  if (high.to === low.to) return 'Same length: the quicker lift goes higher.';
  if (high.s === low.s) return 'Same time: the longer lift goes higher, as its tip is quicker.';
  if (high.to < low.to) return 'A slow lift hardly gets it up: a shorter, quicker one can beat it.';
  if (high.s < low.s) return 'Longer and in less time: that wins both ways.';
  return 'A longer lift can still beat a short one, even in more time.';
}

const pacesByHeight: Generator = {
  id: 'order-paces',
  kind: 'order',
  objective: 'hops',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [20, 25, 35])) });
    if (isCloseIn(setup)) return null;
    const lifts = [10.5, 11, 11.5]
      .flatMap((to) => [0.5, 1, 1.5, 2, 4].map((s) => ({ to, s })))
      .filter(({ to, s }) => s / (to - 10) <= SLOWEST_HOUR_S);
    const contenders = shuffled(random, lifts)
      .slice(0, 3)
      .map(({ to, s }) => ({
        to,
        s,
        hour_s: s / (to - 10),
        id: `to${to * 10}-s${s * 10}`,
        says: `10 to ${saidHour(to)}, in ${saidSeconds(s)}`,
        run: shownLift(setup, 10, to, s)
      }));
    if (!isHeightSeenAlike(contenders)) return null;
    const [first, second, third] = [...contenders].sort(
      (a, b) => nominalOf(b.run, 'peak_height_m') - nominalOf(a.run, 'peak_height_m')
    );
    const rules = [settledBy(first, second), settledBy(second, third), settledBy(first, third)];
    return orderBy({
      ask: `${placeWords(setup)} Three lifts on the rod’s clock, {7 ft|2.1 m} rod. Which takes the jig highest? Highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      contenders,
      right: 'Right. You weighed how quick against how long.',
      reversed: 'That’s lowest first: a slow lift drags it, a quick one lifts it.',
      other: 'First ask which are quick enough to leave bottom. Then weigh pace against length.',
      explain: `${[...new Set(rules)].join(' ')}${quickSaid(contenders)}`
    });
  }
};

const RIGHT_STROKE = 'Right. It’s long, and it’s quick.';
const SLOWER = 'A slow move gets it up less than a quick one.';
const SHORTER = 'Quick, but short: a snap over three hours goes higher.';
const HIGHEST = 'Long and quick: nothing takes it higher.';
const DRAGS = 'A slow, low sweep only drags it.';
const QUICKER = 'Short, but quick: that gets it up more than a slow move.';
const LONG_LIFTS = 'Slow, but three hours: this close, the rising rod lifts it all the same.';

/** A question of height: three moves, the right one first, each with what is said to it. */
interface OfHeight {
  want: 'most' | 'least';
  moves: Partial<Record<Move, string>>;
}

const ONLY_QUICK: OfHeight = {
  want: 'most',
  moves: {
    hop: 'Right. It’s the only quick one, and quick lifts.',
    'slow-sweep': DRAGS,
    'slow-lift': SLOWER
  }
};
const ONLY_DRAGGED: OfHeight = {
  want: 'least',
  moves: {
    'slow-sweep': 'Right. Slow and low: it only drags.',
    hop: QUICKER,
    stroke: HIGHEST
  }
};
const SLOW_AND_SHORT = 'Right. It’s slow, and it’s short.';
const SLOWEST: OfHeight = {
  want: 'least',
  moves: {
    'slow-lift': SLOW_AND_SHORT,
    hop: QUICKER,
    stroke: HIGHEST
  }
};
const LONG_AND_QUICK: OfHeight = {
  want: 'most',
  moves: {
    stroke: RIGHT_STROKE,
    hop: SHORTER,
    'slow-lift': SLOWER
  }
};
const LONG_OF_SLOW: OfHeight = {
  want: 'most',
  moves: {
    'slow-long': 'Right. This close, three hours of rising rod lift it, slow or not.',
    'slow-lift': 'It’s slow, too, but short: three hours lift it more.',
    'slow-sweep': DRAGS
  }
};
const SHORT_OF_SLOW: OfHeight = {
  want: 'least',
  moves: { 'slow-lift': SLOW_AND_SHORT, 'slow-long': LONG_LIFTS, hop: QUICKER }
};
const QUICK_OF_LONG: OfHeight = {
  want: 'most',
  moves: {
    stroke: RIGHT_STROKE,
    'slow-long': 'It’s as long, but slow: a quick snap takes it higher.',
    'slow-sweep': DRAGS
  }
};
/** Each move is right in about one of three questions that have it: none is known by its name. */
const HEIGHTS = [
  ...[ONLY_QUICK, ONLY_QUICK, ONLY_QUICK],
  ...[ONLY_DRAGGED, ONLY_DRAGGED],
  ...[SLOWEST, SLOWEST],
  ...[LONG_AND_QUICK, LONG_OF_SLOW, SHORT_OF_SLOW, QUICK_OF_LONG]
];

const sweepOrLift: Generator = {
  id: 'sweep-or-lift',
  kind: 'choose',
  objective: 'stroke',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(0.5), cast_m: ft(pick(random, [25, 30, 35])) });
    const { want, moves } = dealt(share, HEIGHTS);
    const feet = pick(random, [1.5, 2, 2.5]);
    const hop_s = pick(random, [0.6, 0.8]);
    const slowFrom = pick(random, [9, 10]);
    const all: Record<Move, Pick<Contender, 'says' | 'run'>> = {
      'slow-sweep': {
        says: `a low sweep, ${saidFeet(feet)} in 5 seconds`,
        run: shownDrag(setup, ft(feet), 5)
      },
      'slow-lift': {
        says: `a lift, ${fromTo(slowFrom, slowFrom + 1)} in 4 seconds`,
        run: shownLift(setup, slowFrom, slowFrom + 1, 4)
      },
      'slow-long': {
        says: 'a long lift, 9 to 12 o’clock in 9 seconds',
        run: shownLift(setup, 9, 12, 9)
      },
      hop: { says: 'a quick hop, 10 to 11 o’clock', run: shownLift(setup, 10, 11, hop_s) },
      stroke: { says: 'a long, quick snap, 9 to 12 o’clock', run: shownLift(setup, 9, 12, 0.7) }
    };
    const [[first, right], ...others] = Object.entries(moves) as [Move, string][];
    const draft = chooseBy({
      ask: `${placeWords(setup)} {7 ft|2.1 m} rod. Which move takes it ${want === 'most' ? 'highest' : 'least'} off bottom?`,
      pick: want,
      measure: 'peak_height_m',
      contenders: shuffled(random, [[first, right], ...others] as const).map(([id, says]) => ({
        id,
        ...all[id],
        reply: () => says
      })),
      right,
      explain:
        'Height takes pace and length. Close in, less of either will lift it: the line is steep.'
    });
    return draft?.answer.key === first ? draft : null;
  }
};

type Move = 'slow-sweep' | 'slow-lift' | 'slow-long' | 'hop' | 'stroke';

export const orders = [pacesByHeight, sweepOrLift];
