import { OFF_BOTTOM_M, type Random, type SetupInput } from '../../../model';
import type { ShownRun } from '../../lesson';
import { dealt, drawGear, ft, inch, pick, placeWords, shuffled } from '../draw';
import type { Generator, ItemDraft } from '../generator';
import { onlyGood } from '../limits-item';
import { shownDrag, shownHops, shownLift } from '../moves';
import { saidFeet, saidHour, saidSeconds } from '../said';
import { recognise, type SignOption } from '../sign';

/** What shows in the retrieve, to whoever saw it. */
const SEEN = {
  fast: 'Right. There’s a gap under it on the way.',
  slack: 'Right. The tip moved, and the jig stayed where it was.',
  none: 'Right. It came along, on bottom all the way.'
} as const;

const dragFault: Generator = {
  id: 'fault-of-drag',
  kind: 'fault',
  objective: 'faults',
  make: (random, share) => {
    const fault = dealt(share, ['fast', 'slack', 'none'] as const);
    const cast_m = ft(pick(random, [30, 35, 40]));
    const slack_m = fault === 'slack' ? ft(4) : inch(1);
    const setup = drawGear(random, { cast_m, slack_m });
    const run = shownDrag(setup, ft(fault === 'slack' ? 1 : 2), fault === 'fast' ? 0.35 : 4);
    const options: SignOption[] = [
      {
        id: 'fast',
        says: 'too fast: it left the bottom',
        sign: 'lifted',
        reply: 'Too fast shows a gap under the jig. This one kept to the bottom.'
      },
      {
        id: 'slack',
        says: 'slack: it hardly moved at all',
        sign: 'hardly moved',
        reply: 'Slack shows as a tip that moves and a jig that doesn’t. This jig came along.'
      },
      {
        id: 'none',
        says: 'nothing: that’s a good drag',
        sign: 'stayed down',
        reply:
          fault === 'fast'
            ? 'It was off bottom on the way: look at the gap under it.'
            : 'It hardly moved: the tip only took up slack.'
      }
    ];
    return recognise({
      ask: `${placeWords(setup)} You meant to drag it along the bottom. What went wrong?`,
      caption: 'The retrieve',
      run,
      shows: 'retrieve',
      options: options.map((one) => (one.id === fault ? { ...one, reply: SEEN[fault] } : one)),
      key: fault,
      unknowns: 'drag',
      explain: 'Look at the jig, not at the rod: was it down, and did it come along?'
    });
  }
};

const TIMES = ['once', 'twice', 'three times'];

const hopFault: Generator = {
  id: 'fault-of-hops',
  kind: 'fault',
  objective: 'hops',
  make: (random, share) => {
    const count = dealt(share, [1, 2, 3]);
    const cast_m = ft(pick(random, [20, 25, 30]));
    const pace_s = pick(random, [0.4, 0.5]);
    const setup = drawGear(random, { cast_m, slack_m: inch(0.5) });
    const words = ['one', 'two', 'three'];
    const signs = ['one hop', 'two hops', 'three hops'] as const;
    const options: SignOption[] = words.map((word, i) => ({
      id: word,
      says: `${signs[i]} off bottom`,
      sign: signs[i],
      reply:
        i + 1 === count
          ? 'Right. Each time it leaves bottom, and it’s down in between.'
          : `It hopped ${TIMES[count - 1]}. Count each stretch with a gap under it, not each time the rod moves.`
    }));
    return recognise({
      ask: `${placeWords(setup)} Watch the retrieve. How many times did it hop?`,
      caption: `${words[count - 1]} hop${count === 1 ? '' : 's'}`,
      run: shownHops(setup, 10, 11, pace_s, count, 2.5),
      shows: 'retrieve',
      options,
      key: words[count - 1],
      unknowns: 'drag',
      explain: 'A hop ends when the jig is back on bottom. Let it land, and feel it land.'
    });
  }
};

/** A move, how far it takes the tip, m, and in how long. */
interface Paced {
  id: string;
  says: string;
  tip_m: number;
  s: number;
  run: ShownRun;
}

/**
 * So slow a tip drags any of these jigs, and one between these is quick enough to lift it and not
 * quicker than an arm; the model decides each anew.
 */
const SLOW_M_S = 0.26;
const QUICK_M_S = [0.6, 2.5] as const;

/** Which of three moves stays down; the two others surely lift. */
function onlyOneDown(ask: string, moves: readonly Paced[]): ItemDraft | null {
  return onlyGood({
    ask,
    limits: [{ measure: 'peak_height_m', unknowns: 'slack and drag', most: OFF_BOTTOM_M }],
    plans: moves.map(({ id, says, run }) => ({
      id,
      says,
      reply: `${says} is too fast: the jig comes off bottom, and you feel nothing.`,
      runs: [{ caption: says, run }]
    })),
    right: 'Right. It’s the slowest of the three: the least tip for each second.',
    explain: 'Divide how far by how long. Pace lifts a jig: not distance alone, not time alone.'
  });
}

/** Whether the slow move is the shortest of the three, in length and in time alike, the middle one, or the longest. */
const RANKS = [0, 1, 2] as const;

/**
 * One slow move and two quick ones of these, in any order. Length and time have the slow one in the
 * same place, each place as often, so that neither number gives it away.
 */
function oneSlow(random: Random, share: number, all: readonly Paced[]): Paced[] {
  const shorter = dealt(share, RANKS);
  const quick = shuffled(
    random,
    all.filter(({ tip_m, s }) => tip_m / s >= QUICK_M_S[0] && tip_m / s <= QUICK_M_S[1])
  );
  const sets = all
    .filter(({ tip_m, s }) => tip_m / s <= SLOW_M_S)
    .map((slow) => [slow, ...around(slow, quick, shorter)])
    .filter((moves) => moves.length === 3);
  return shuffled(random, pick(random, sets));
}

/** As many of these below the slow move, in length and in time, as are to be, and the rest above. */
function around(slow: Paced, quick: readonly Paced[], shorter: number): Paced[] {
  const below = quick.filter(({ tip_m, s }) => tip_m < slow.tip_m && s < slow.s);
  const above = quick.filter(({ tip_m, s }) => tip_m > slow.tip_m && s > slow.s);
  return [...below.slice(0, shorter), ...above.slice(0, 2 - shorter)];
}

const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [25, 30, 35])) });
    const moves = [0.5, 1, 1.5, 2, 3, 4, 5, 6].flatMap((feet) =>
      [0.3, 0.4, 0.6, 1, 1.5, 2, 2.5, 3, 4, 6].map((s): Paced => ({
        id: `f${feet * 2}-s${s * 10}`,
        says: `${saidFeet(feet)} in ${saidSeconds(s)}`,
        tip_m: ft(feet),
        s,
        run: shownDrag(setup, ft(feet), s)
      }))
    );
    return onlyOneDown(
      `${placeWords(setup)} Three drags with a low rod. Which keeps it on bottom?`,
      oneSlow(random, share, moves)
    );
  }
};

const liftLimit: Generator = {
  id: 'lift-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 35, 40])) });
    const moves = [9, 9.5, 10].flatMap((from) =>
      [0.5, 1, 1.5, 2, 3]
        .filter((hours) => from + hours <= 12)
        .flatMap((hours) =>
          [0.4, 0.6, 1, 1.5, 2, 3, 3.5, 4, 5, 8].map((s) => pacedLift(setup, from, hours, s))
        )
    );
    return onlyOneDown(
      `${placeWords(setup)} Three lifts on the rod’s clock, {7 ft|2.1 m} rod. Which leaves it on bottom?`,
      oneSlow(random, share, moves)
    );
  }
};

/** An hour of a 7 ft rod takes its tip about 0.9 m round. */
const TIP_M_AN_HOUR = 0.9;

function pacedLift(setup: SetupInput, from: number, hours: number, s: number): Paced {
  return {
    id: `h${from * 10}-${hours * 10}-s${s * 10}`,
    says: `${saidHour(from)} to ${saidHour(from + hours)} o’clock in ${saidSeconds(s)}`,
    tip_m: hours * TIP_M_AN_HOUR,
    s,
    run: shownLift(setup, from, from + hours, s)
  };
}

export const faults = [dragFault, hopFault, paceLimit, liftLimit];
