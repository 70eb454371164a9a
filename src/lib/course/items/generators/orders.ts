import {
  depth,
  drawGear,
  ft,
  inch,
  lengthToken,
  oz,
  pick,
  placeWords,
  several,
  shuffled,
  timeToken,
  weightToken,
  DRAWN_LINES
} from '../draw';
import type { Generator } from '../generator';
import { shownDrag, fall, shownLift } from '../moves';
import { chooseBy, orderBy } from '../rank-item';

const pacesByHeight: Generator = {
  id: 'order-paces',
  kind: 'order',
  objective: 'speed-limit',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [22, 28, 35])) });
    const paces = several(random, [0.5, 0.8, 1.2, 1.8, 3], 3);
    return orderBy({
      ask: `${placeWords(setup)} You lift from 10 to 11 o’clock at three paces. Which takes the bait highest? Highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      contenders: shuffled(random, paces).map((s) => ({
        id: `s${s * 10}`,
        says: `in ${timeToken(s)}`,
        run: shownLift(setup, 10, 11, s)
      })),
      right: 'Yes. Only speed lifts a bait.',
      reversed: 'The other way round: a slow pull drags it along, a quick one lifts it.',
      other: 'The lift is the same; ask which is quickest.',
      explain:
        'A slow pull never lifts a jig off a smooth, flat bottom. Every lift is a matter of speed.'
    });
  }
};

const slackByTravel: Generator = {
  id: 'order-slack',
  kind: 'order',
  objective: 'slack',
  make: (random) => {
    const setup = drawGear(random);
    const slacks = several(random, [2, 5, 10, 16, 24], 3);
    const tip = ft(pick(random, [2, 2.5, 3]));
    return orderBy({
      ask: `${placeWords(setup)} The same slow sweep of ${lengthToken(tip)}, with three amounts of slack. Which moves the bait furthest? Furthest first.`,
      rule: 'furthest first',
      measure: 'travel_m',
      unknowns: 'drag',
      contenders: shuffled(random, slacks).map((inches) => ({
        id: `in${inches}`,
        says: `${lengthToken(inch(inches))} of slack`,
        run: shownDrag({ ...setup, start: { ...setup.start, slack_m: inch(inches) } }, tip, 4)
      })),
      right: 'Yes: slack comes off first.',
      reversed: 'The other way round: slack eats the way of the tip, it adds nothing.',
      other: 'What the tip spends on slack, the bait does not get.',
      explain: 'Slack is what nobody sees. Reel down until you feel the bait, then move.'
    });
  }
};

const hoursByTravel: Generator = {
  id: 'hour-of-most-travel',
  kind: 'choose',
  objective: 'clock',
  make: (random) => {
    const setup = drawGear(random);
    const duration_s = pick(random, [1.5, 2, 3]);
    const want = pick(random, ['most', 'least'] as const);
    const replies = [
      'The first hour swings the tip up across the line to the bait, which takes up the least of it.',
      'The second hour takes up more than the first, but it is not the end of the scale.',
      'By now the tip swings back along the line: this hour takes up the most.'
    ];
    return chooseBy({
      ask: `${placeWords(setup)} You lift one hour on the clock in ${timeToken(duration_s)}. Which hour moves the bait ${want === 'most' ? 'furthest' : 'least'}?`,
      pick: want,
      measure: 'travel_m',
      contenders: [8, 9, 10.5].map((from, i) => ({
        id: `h${i + 1}`,
        says: `from ${clock(from)} to ${clock(from + 1)}`,
        reply: replies[i],
        run: shownLift(setup, from, from + 1, duration_s)
      })),
      right:
        'Yes. What counts is how much further the tip gets from the bait, not how far it swings.',
      explain: 'Low down the tip moves across the line; high up it moves back along it.'
    });
  }
};

const nearOrFar: Generator = {
  id: 'near-or-far',
  kind: 'choose',
  objective: 'speed-limit',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(0.5) });
    const { depth_m } = setup.water;
    const duration_s = pick(random, [0.5, 0.6, 0.7]);
    const places = [
      { far: 1.3, id: 'near', reply: 'Close in the line is steep: the same pull lifts more.' },
      {
        far: 3,
        id: 'middle',
        reply: 'Here the line is flatter than close in and steeper than far out.'
      },
      { far: 6.5, id: 'far', reply: 'Far out the line lies flat and pulls along the bottom.' }
    ];
    const want = pick(random, ['most', 'least'] as const);
    return chooseBy({
      ask: `The same quick lift, 10 to 11 o’clock in ${timeToken(duration_s)}, in ${depth(depth_m)} of water. Where does it lift a jig of ${weightToken(setup.bait.mass_kg)} ${want}?`,
      pick: want,
      measure: 'peak_height_m',
      contenders: shuffled(random, places).map(({ far, id, reply }) => ({
        id,
        says: `${depth(far * depth_m)} out`,
        reply,
        run: shownLift(
          { ...setup, start: { ...setup.start, bait_x_m: far * depth_m } },
          10,
          11,
          duration_s
        )
      })),
      right: 'Yes: the steeper the line at the bait, the more of the pull goes up.',
      explain: 'As the bait comes near: slower, tip lower, or heavier.'
    });
  }
};

const sweepOrLift: Generator = {
  id: 'sweep-or-lift',
  kind: 'choose',
  objective: 'stroke',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(0.5), cast_m: ft(pick(random, [24, 30, 36])) });
    const want = pick(random, ['most', 'least'] as const);
    const moves = [
      {
        id: 'slow-sweep',
        says: 'a slow low sweep',
        run: shownDrag(setup, ft(2.5), 5),
        reply: 'A slow low sweep leaves it on the bottom.'
      },
      {
        id: 'one-hour',
        says: 'one clock hour, briskly',
        run: shownLift(setup, 10, 11, 0.8),
        reply: 'A brisk hour makes a hop, but a longer, quicker move rises further.'
      },
      {
        id: 'stroke',
        says: 'a snap, 9 to 12 o’clock',
        run: shownLift(setup, 9, 12, 0.7),
        reply: 'A snap over three hours is what takes it highest.'
      }
    ];
    return chooseBy({
      ask: `${placeWords(setup)} Which move takes it ${want === 'most' ? 'highest off' : 'least off'} the bottom?`,
      pick: want,
      measure: 'peak_height_m',
      contenders: moves,
      right: 'Yes. Speed and steepness lift; slowness and a low rod drag.',
      explain: 'Drag, hop and stroke are one move at three speeds and sizes.'
    });
  }
};

const linesByFall: Generator = {
  id: 'line-and-fall',
  kind: 'choose',
  objective: 'line-rod',
  make: (random) => {
    const depth_m = ft(pick(random, [20, 24, 28]));
    const setup = drawGear(random, { depth_m, mass_kg: oz(pick(random, [1 / 4, 3 / 8])) });
    const want = pick(random, ['most', 'least'] as const);
    const choices = [
      {
        id: 'thin',
        says: 'thin braid',
        mm: 0.15,
        line: DRAWN_LINES.braid,
        reply: 'Thin line has the least surface for the water to hold.'
      },
      {
        id: 'thick',
        says: 'thick nylon',
        mm: 0.6,
        line: DRAWN_LINES.nylon,
        reply: 'The thick line has the most surface for the water to hold.'
      }
    ];
    return chooseBy({
      ask: `A jig of ${weightToken(setup.bait.mass_kg)} falls on an open spool through ${depth(depth_m)} of water. On which line is it ${want === 'most' ? 'slower' : 'faster'} down?`,
      pick: want,
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: choices.map(({ id, says, mm, line, reply }) => ({
        id,
        says: `${says}, {diameter:${(mm / 1000).toFixed(5)}}`,
        reply,
        run: fall({ ...setup, line: { ...line, diameter_m: mm / 1000 } }, 40)
      })),
      right: 'Yes: the falling jig draws its line through the water behind it.',
      explain: 'The thicker the line, the slower the fall and the bigger the bow.'
    });
  }
};

/** All alike in form, so that none of them stands out: 9:00, 10:30. */
function clock(hour: number): string {
  return `${Math.floor(hour)}:${Number.isInteger(hour) ? '00' : '30'}`;
}

export const orders = [
  pacesByHeight,
  slackByTravel,
  hoursByTravel,
  nearOrFar,
  sweepOrLift,
  linesByFall
];
