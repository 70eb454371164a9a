import { drawGear, ft, inch, lengthToken, pick, placeWords, timeToken } from '../draw';
import type { Generator } from '../generator';
import { shownDrag, shownHops, shownLift } from '../moves';
import { markValue } from '../value-item';

const ON_RULER = 'Mark where it comes to rest, measured from where it lies now.';

const dragStop: Generator = {
  id: 'mark-drag',
  kind: 'mark',
  objective: 'one-foot',
  make: (random) => {
    const setup = drawGear(random);
    const tip = ft(pick(random, [1, 1.5, 2, 2.5, 3]));
    const duration_s = pick(random, [3, 4, 5, 6]);
    return markValue({
      ask: `${placeWords(setup)} You sweep a low rod slowly: the tip goes ${lengthToken(tip)} in ${timeToken(duration_s)}. ${ON_RULER}`,
      caption: 'The sweep',
      run: shownDrag(setup, tip, duration_s),
      measure: 'travel_m',
      right: 'That is where it stops.',
      explain:
        'In a slow drag the bait goes about as far as the tip, less the slack that is taken up first.',
      errors: (key) => [
        {
          id: 'half',
          value: key / 2,
          reply:
            'Water does not hold a bait back by half: a slow line passes on nearly all of what the tip does.'
        },
        {
          id: 'double',
          value: 2 * key,
          reply: 'It does not glide on. Bottom and water stop it where the line stops.'
        }
      ],
      other: 'Take the way of the tip, and take off the slack.'
    });
  }
};

const slackDrag: Generator = {
  id: 'mark-slack-drag',
  kind: 'mark',
  objective: 'slack',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(pick(random, [10, 14, 18])) });
    const tip = ft(pick(random, [2, 2.5, 3]));
    const duration_s = pick(random, [3, 4, 5]);
    return markValue({
      ask: `${placeWords(setup)} ${lengthToken(setup.start.slack_m ?? 0)} of slack hangs in the line. The tip goes ${lengthToken(tip)} to the side in ${timeToken(duration_s)}. ${ON_RULER}`,
      caption: 'The sweep with slack',
      run: shownDrag(setup, tip, duration_s),
      measure: 'travel_m',
      unknowns: 'drag',
      right: 'Yes: the slack came off the way of the bait.',
      explain:
        'The tip takes up the slack before it moves the bait. How much comes off depends on where the slack lies: some of it stays in the bow.',
      errors: (key) => [
        {
          id: 'slack-ignored',
          value: tip,
          reply: 'That is the way of the tip. The slack has to be taken up first.'
        },
        {
          id: 'twice-slack',
          value: key / 2,
          reply:
            'Part of the slack stays in the bow of the line; less than half of the way is lost.'
        }
      ],
      other: 'Start from the way of the tip and take off what slack there was.'
    });
  }
};

const liftStop: Generator = {
  id: 'mark-hour',
  kind: 'mark',
  objective: 'clock',
  make: (random) => {
    const setup = drawGear(random);
    const from = pick(random, [9, 9, 10, 11]);
    const duration_s = pick(random, [1.5, 2, 2.5]);
    return markValue({
      ask: `${placeWords(setup)} You lift the rod from ${from} to ${from + 1} o’clock in ${timeToken(duration_s)}. ${ON_RULER}`,
      caption: `From ${from} to ${from + 1} o’clock`,
      run: shownLift(setup, from, from + 1, duration_s),
      measure: 'travel_m',
      right: 'That is where it stops.',
      explain:
        'An hour on the clock moves the tip along its arc; the bait follows as far as the tip gets away from it along the line.',
      errors: (key) => [
        {
          id: 'inches',
          value: key / 3,
          reply:
            'An hour feels small in the hand, but the tip is far out: it moves the bait feet, not inches.'
        },
        {
          id: 'double',
          value: 2 * key,
          reply: 'That is more than the tip’s arc. The bait cannot outrun the tip by so much.'
        }
      ],
      other: 'The tip’s arc for an hour is about half of the rod’s reach.'
    });
  }
};

const hopHeight: Generator = {
  id: 'mark-hop-height',
  kind: 'mark',
  objective: 'hops',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [25, 30, 35])) });
    const from = pick(random, [10, 10.5, 11]);
    const pace_s = pick(random, [0.4, 0.5, 0.6]);
    return markValue({
      ask: `${placeWords(setup)} You lift from ${clock(from)} to ${clock(from + 1)} in ${timeToken(pace_s)} and come down again. Mark how high the bait gets above the bottom.`,
      caption: 'The hop',
      run: shownHops(setup, from, from + 1, pace_s, 1, 1),
      measure: 'peak_height_m',
      right: 'That is how high it gets.',
      explain:
        'Most of a quick lift goes into travel: the line pulls the bait towards you, and only its steepness pulls it up.',
      errors: (key) => [
        {
          id: 'arc',
          value: Math.max(4 * key, 0.9),
          reply:
            'That is the way of the tip. Most of it becomes travel along the bottom, not height.'
        },
        { id: 'none', value: key / 8, reply: 'So quick a lift does not leave it on the bottom.' }
      ],
      other: 'Think of a part of the tip’s way, not all of it.'
    });
  }
};

const twoHops: Generator = {
  id: 'mark-two-hops',
  kind: 'mark',
  objective: 'hops',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(2) });
    const pace_s = pick(random, [0.6, 0.8, 1]);
    return markValue({
      ask: `${placeWords(setup)} You lift from 10 to 11 o’clock in ${timeToken(pace_s)}, lower the rod, wait, and do it again, reeling nothing. ${ON_RULER}`,
      caption: 'Twice from 10 to 11',
      run: shownHops(setup, 10, 11, pace_s, 2, 1.5),
      measure: 'travel_m',
      right: 'Yes. The second lift only took back the slack that lowering the rod had given.',
      explain:
        'Lowering the rod gives slack. Unless the reel takes it in, the next lift spends itself on it: the reel recovers line, the rod moves the bait.',
      errors: (key) => [
        {
          id: 'twice',
          value: 2 * key,
          reply: 'Twice the lift is not twice the way: lowering the rod gave the line back.'
        },
        { id: 'small', value: key / 2.5, reply: 'The first lift alone does more than that.' }
      ],
      other: 'Think what lowering the rod does to the line before the second lift.'
    });
  }
};

function clock(hour: number): string {
  return Number.isInteger(hour) ? `${hour} o’clock` : `half past ${Math.floor(hour)}`;
}

export const markGenerators = [dragStop, slackDrag, liftStop, hopHeight, twoHops];
