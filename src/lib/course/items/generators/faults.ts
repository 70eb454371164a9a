import { OFF_BOTTOM_M } from '../../../model';
import { depth, drawGear, ft, inch, lengthToken, pick, placeWords, timeToken } from '../draw';
import type { Generator } from '../generator';
import { lastWithin } from '../limit-item';
import { shownDrag, shownHops, shownLift } from '../moves';
import { recognise, type SignOption } from '../sign';

const dragFault: Generator = {
  id: 'fault-of-drag',
  kind: 'fault',
  objective: 'faults',
  make: (random) => {
    const fault = pick(random, ['fast', 'slack', 'none'] as const);
    const cast_m = ft(pick(random, [28, 34, 40]));
    const slack_m = fault === 'slack' ? ft(4) : inch(1);
    const setup = drawGear(random, { cast_m, slack_m });
    const run = shownDrag(setup, ft(fault === 'slack' ? 1 : 2), fault === 'fast' ? 0.35 : 4);
    const options: SignOption[] = [
      {
        id: 'fast',
        says: 'too fast: it left the bottom',
        sign: 'lifted',
        reply: 'A bait that was pulled too fast shows a gap under it. Look at the heights again.'
      },
      {
        id: 'slack',
        says: 'slack: it hardly moved at all',
        sign: 'hardly moved',
        reply:
          'A slack line shows in a tip that moves and a bait that does not. This bait went along.'
      },
      {
        id: 'none',
        says: 'nothing: dragged as was meant',
        sign: 'stayed down',
        reply:
          fault === 'fast'
            ? 'It left the bottom on its way: that was not meant. Look at the heights again.'
            : 'It hardly moved: the tip took up slack, and the bait lay where it was.'
      }
    ];
    return recognise({
      ask: `${placeWords(setup)} It was meant to be dragged along the bottom. What went wrong?`,
      caption: 'The retrieve',
      run,
      shows: 'retrieve',
      options: options.map((one) =>
        one.id === fault ? { ...one, reply: 'Yes, that is what the run shows.' } : one
      ),
      key: fault,
      unknowns: 'drag',
      explain: 'Look at the bait, not at the rod: was it on the bottom, and did it go along?'
    });
  }
};

const hopFault: Generator = {
  id: 'fault-of-hops',
  kind: 'fault',
  objective: 'hops',
  make: (random) => {
    const count = pick(random, [1, 2, 3]);
    const setup = drawGear(random, { cast_m: ft(pick(random, [24, 30])), slack_m: inch(0.5) });
    const words = ['one', 'two', 'three'];
    const signs = ['one hop', 'two hops', 'three hops'] as const;
    const options: SignOption[] = words.map((word, i) => ({
      id: word,
      says: `${signs[i]} off the bottom`,
      sign: signs[i],
      reply:
        i + 1 === count
          ? 'Yes. Each one has its own flight, and the bait is down between them.'
          : 'Count the flights: the stretches in which the bait is clear of the bottom.'
    }));
    return recognise({
      ask: `${placeWords(setup)} Watch the retrieve. How many times did the bait hop?`,
      caption: `${words[count - 1]} hop${count === 1 ? '' : 's'}`,
      run: shownHops(setup, 10, 11, 0.5, count, 2.5),
      shows: 'retrieve',
      options,
      key: words[count - 1],
      unknowns: 'drag',
      explain:
        'A hop that is not followed by rest runs into the next: let it come down, and feel that it is down.'
    });
  }
};

const paceLimit: Generator = {
  id: 'pace-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [24, 30, 36])) });
    const paces = pick(random, [
      [6, 3, 0.5],
      [8, 3, 0.4],
      [5, 2.5, 0.4],
      [10, 0.6, 0.3]
    ]);
    return lastWithin({
      ask: `${placeWords(setup)} You drag it ${lengthToken(ft(2))} with a low rod. What is the fastest that still scratches over the bottom?`,
      measure: 'peak_height_m',
      most: OFF_BOTTOM_M,
      contenders: paces.map((s, i) => ({
        id: `step-${i + 1}`,
        says: `in ${timeToken(s)}`,
        run: shownDrag(setup, ft(2), s)
      })),
      right: 'Yes. Any faster and it leaves the bottom.',
      timid: 'It stays down, but a faster one does too.',
      bold: 'That lifts it. Over rock you would feel nothing and think that nothing is there.',
      explain: 'A missed rock pile may be a fast hand.'
    });
  }
};

const weightLimit: Generator = {
  id: 'lift-limit',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [28, 34, 40])) });
    const paces = pick(random, [
      [6, 3.5, 0.5],
      [8, 4, 0.6],
      [10, 0.6, 0.4]
    ]);
    return lastWithin({
      ask: `${placeWords(setup)} You lift from 9 to 10 o’clock. What is the fastest that leaves it on the bottom?`,
      measure: 'peak_height_m',
      most: OFF_BOTTOM_M,
      contenders: paces.map((s, i) => ({
        id: `step-${i + 1}`,
        says: `in ${timeToken(s)}`,
        run: shownLift(setup, 9, 10, s)
      })),
      right: 'Yes. It is the pace that lifts, not the height of the rod.',
      timid: 'It stays down, but a faster one does too.',
      bold: 'That lifts it off.',
      explain: `In ${depth(setup.water.depth_m)} of water, as anywhere, a slow lift drags and a quick one hops.`
    });
  }
};

export const faults = [dragFault, hopFault, paceLimit, weightLimit];
