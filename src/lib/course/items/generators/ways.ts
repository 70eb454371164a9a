import { drawGear, ft, lengthToken, pick, placeWords, several, shuffled, timeToken } from '../draw';
import type { Generator } from '../generator';
import { shownDrag } from '../moves';
import { chooseBy } from '../rank-item';
import { chooseValue } from '../value-item';

const wayOfTip: Generator = {
  id: 'tip-way-for-one-foot',
  kind: 'choose',
  objective: 'one-foot',
  make: (random) => {
    const setup = drawGear(random);
    const duration_s = pick(random, [3, 4, 5]);
    const want = pick(random, ['most', 'least'] as const);
    const ways = several(random, [0.5, 1, 1.5, 2, 2.5, 3], 3);
    return chooseBy({
      ask: `${placeWords(setup)} Three slow sweeps, each in ${timeToken(duration_s)}. Which moves the bait ${want === 'most' ? 'furthest' : 'least'}?`,
      pick: want,
      measure: 'travel_m',
      contenders: shuffled(random, ways).map((feet) => ({
        id: `f${feet * 2}`,
        says: `tip ${lengthToken(ft(feet))} to the side`,
        reply:
          'At this pace the bait goes as far as the tip, less the slack: compare the ways of the tip.',
        run: shownDrag(setup, ft(feet), duration_s)
      })),
      right: 'Yes: in a slow drag the bait follows the tip.',
      explain: 'At a slow, even pace the way of the tip is the way of the bait, less the slack.'
    });
  }
};

/** Two wrong values beside the right one: both below it, on both sides, or both above. */
const ROUND_IT = [
  ['quarter', 'half'],
  ['half', 'double'],
  ['double', 'triple']
] as const;
const OFF = {
  quarter: {
    times: 1 / 4,
    reply: 'Depth and distance do not swallow a slow pull: the line is hardly loaded.'
  },
  half: {
    times: 1 / 2,
    reply: 'Stretch and sag do not take half of it. Once the slack is out, the bait comes along.'
  },
  double: {
    times: 2,
    reply: 'It gets no more line than the tip takes up, and does not glide on.'
  },
  triple: {
    times: 3,
    reply: 'It gets no more line than the tip takes up, however light it is.'
  }
};

const wayOfBait: Generator = {
  id: 'bait-way-of-slow-drag',
  kind: 'choose',
  objective: 'one-foot',
  make: (random) => {
    const setup = drawGear(random);
    const tip = ft(pick(random, [1, 1.5, 2.5, 3]));
    const duration_s = pick(random, [3, 4, 5]);
    const wrong = pick(random, ROUND_IT);
    return chooseValue({
      ask: `${placeWords(setup)} In ${timeToken(duration_s)} you draw the rod aside; its tip goes ${lengthToken(tip)} further from the jig. How far does the jig come?`,
      caption: 'The sweep',
      run: shownDrag(setup, tip, duration_s),
      measure: 'travel_m',
      says: (value) => lengthToken(value),
      right: 'Yes: slowly, the jig goes the way of the tip, less a little slack.',
      explain:
        'Deep or shallow, near or far, light or heavy: at a slow pace the way of the tip is the way of the jig, less the slack.',
      errors: (key) => wrong.map((id) => ({ id, value: key * OFF[id].times, reply: OFF[id].reply }))
    });
  }
};

/** A slow drag: the way of the tip is the way of the bait. */
export const ways = [wayOfTip, wayOfBait];
