import * as v from 'valibot';
import type { Result } from '../../model';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { tipMotionOf } from '../tip-motion';
import { drawnByReel, slackReeled } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** A bait that the reel draws this far has been dragged with it; and so much further earns nothing, m. */
export const DRAGGED_M = 0.05;

/** Line that the reel takes in while the bait lies still, m. */
export const reeled = goalKind({
  schema: v.strictObject({
    kind: v.literal('reeled'),
    least_m: numberIn(0.05, 30),
    /** What gives the slack, where it is not the rod that goes forward. */
    given_by: v.optional(v.literal('boat')),
    weight
  }),
  figure: {
    unit: 'm',
    name: 'Slack reeled in',
    less: 'too little',
    more: 'too much',
    asked: ({ least_m }) => [least_m, null],
    raise: (off) => `Reel in ${off} more slack.`,
    lower: (off) => `Reel in ${off} less.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, run) => slackReeled(run),
  share: ({ least_m }, value, run) =>
    fading(least_m - value, least_m) * fading(drawnByReel(run) - DRAGGED_M, DRAGGED_M),
  words: ({ least_m }, value, units, met) => {
    const length = formatBeside(value, [least_m, Infinity], (m) => formatLength(m, units));
    const reached = value < DRAGGED_M ? 'none' : length;
    return {
      name: 'Slack reeled in',
      asked: `${formatLength(least_m, units)} or more, jig still`,
      reached: hasDragged(least_m, value, met) ? `${reached}, and the jig moved` : reached
    };
  },
  did: ({ least_m }, value, units) =>
    value < least_m ? null : `The reel took up ${formatLength(value, units)} of slack.`,
  miss: ({ least_m }, value, units, _, met) => {
    const length = (m: number) => formatLength(m, units);
    // That, and how far, is the first thing told.
    if (hasDragged(least_m, value, met)) return '';
    if (value < DRAGGED_M) return 'the reel took up no slack';
    return `the reel took up ${formatBeside(value, [least_m, Infinity], length)} of slack, not ${length(least_m)}`;
  },
  advice: ({ least_m, given_by }, value, result, met) => {
    const isDragged = hasDragged(least_m, value, met);
    if (given_by === 'boat')
      return isDragged
        ? 'Wait for slack, and stop reeling as soon as the line is tight'
        : 'Reel up what the boat gives, then move the rod';
    if (isReeledFirst(result)) return 'Move the rod first: there’s no slack to reel yet';
    if (!isTurnedBack(result))
      return 'The reel has slack to take only once the rod has gone forward';
    return isDragged
      ? 'Stop reeling as soon as the line is tight'
      : 'Reel up the slack while the jig sits still';
  },
  step: ({ given_by }, _, result) => {
    if (given_by) return 'reel';
    if (isReeledFirst(result)) return 'pull';
    return isTurnedBack(result) ? 'reel' : 'back';
  }
});

/** Whether the reel drew the bait before the rod was moved. */
function isReeledFirst({ trace: { tip_x_m, tip_z_m, bait_x_m } }: Result): boolean {
  const isMoved = (x: number, i: number) =>
    Math.hypot(x - tip_x_m[0], tip_z_m[i] - tip_z_m[0]) > DRAGGED_M;
  const moved = tip_x_m.findIndex(isMoved);
  const drawn_m = bait_x_m[moved < 0 ? bait_x_m.length - 1 : moved] - bait_x_m[0];
  return Math.abs(drawn_m) > DRAGGED_M;
}

/** Until the tip has given line back there is no slack to reel in. */
function isTurnedBack(result: Result): boolean {
  return tipMotionOf(result).gaveBack_m > DRAGGED_M;
}

/** What was earned is less than the slack alone would have: the reel has drawn the bait. */
function hasDragged(least_m: number, value: number, met: number): boolean {
  return met < fading(least_m - value, least_m);
}
