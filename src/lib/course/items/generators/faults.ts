import { dealt, drawGear, ft, inch, pick, placeWords, isCloseIn } from '../draw';
import type { Generator } from '../generator';
import { shownDrag, shownHops } from '../moves';
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
    const cast_m = ft(pick(random, [30, 35, 40, 45]));
    const slack_m = fault === 'slack' ? ft(4) : inch(1);
    const setup = drawGear(random, { cast_m, slack_m });
    if (isCloseIn(setup)) return null;
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
        says: 'all good: it came on bottom',
        sign: 'stayed down',
        reply:
          fault === 'fast'
            ? 'It was off bottom on the way: look at the gap under it.'
            : 'It hardly moved: the tip only took up slack.'
      }
    ];
    return recognise({
      ask: `${placeWords(setup)} You meant to drag it on bottom. What happened?`,
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

/** To whoever saw so many hops of so many. */
function miscounted(seen: number, count: number): string {
  const off = Math.abs(seen - count) === 1 ? 'One' : 'Two';
  return `${off} too ${seen < count ? 'few' : 'many'}: there was a gap under the jig ${TIMES[count - 1]}.`;
}

const hopFault: Generator = {
  id: 'fault-of-hops',
  kind: 'fault',
  objective: 'hops',
  make: (random, share) => {
    const count = dealt(share, [1, 2, 3]);
    const cast_m = ft(pick(random, [25, 30, 35]));
    const pace_s = pick(random, [0.4, 0.5]);
    const setup = drawGear(random, { cast_m, slack_m: inch(0.5) });
    if (isCloseIn(setup)) return null;
    const words = ['one', 'two', 'three'];
    const signs = ['one hop', 'two hops', 'three hops'] as const;
    const options: SignOption[] = words.map((word, i) => ({
      id: word,
      says: `${signs[i]} off bottom`,
      sign: signs[i],
      reply:
        i + 1 === count
          ? `Right. It left bottom and landed ${TIMES[count - 1]}.`
          : miscounted(i + 1, count)
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

export const faults = [dragFault, hopFault];
