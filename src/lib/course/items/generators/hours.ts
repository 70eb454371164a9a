import { clockHourToDeg, type SetupInput } from '../../../model';
import { dealt, drawGear, pick, placeWords, shuffled } from '../draw';
import { figuresOf } from '../figures';
import type { Generator } from '../generator';
import { shownScenarioOf } from '../measure';
import { MEASURES } from '../measures';
import { shownLift } from '../moves';
import { chooseBy } from '../rank-item';
import { saidHour, saidSeconds } from '../said';
import { guides_ft, travelsSeen_m, type Seen } from './seen-by-guides';

/** A lift by the rod's clock. */
type Hours = readonly [from: number, to: number];
type Want = 'most' | 'least';

/**
 * The right lift, and the two beside it. Each is right in about one of three questions that have it, and so is
 * each hour that one begins or ends with; the right one is as often the middle one of the clock, and a
 * longer lift that begins lower is often beaten by a shorter one.
 */
const ROWS: readonly (readonly [Want, Hours, Hours, Hours])[] = [
  ['least', [8, 9.5], [8.5, 10], [9, 10.5]],
  ['most', [8.5, 10.5], [8, 9], [8, 10]],
  ['least', [8, 10], [9.5, 11], [10, 11.5]],
  ['most', [9, 10.5], [10.5, 11], [8.5, 10]],
  ['least', [8, 9], [10, 11], [10, 11.5]],
  ['most', [9.5, 11], [8.5, 9.5], [8, 9.5]],
  ['least', [8, 9], [9.5, 10.5], [10.5, 11.5]],
  ['most', [9.5, 10.5], [10.5, 11], [8, 9]],
  ['least', [8, 9.5], [8.5, 10], [8.5, 10.5]],
  ['most', [9.5, 10.5], [8, 9], [8.5, 9.5]],
  ['least', [8.5, 9.5], [10, 11], [10.5, 12]],
  ['most', [10, 11], [8, 9], [8, 9.5]],
  ['least', [8.5, 10], [10.5, 12], [10, 12]],
  ['most', [10, 12], [8, 9.5], [8.5, 10.5]],
  ['least', [8.5, 10], [9, 10.5], [9.5, 11]],
  ['most', [10, 11.5], [9.5, 10.5], [8, 9.5]],
  ['least', [9, 9.5], [10.5, 12], [10, 12]],
  ['most', [10.5, 12], [9, 10], [8.5, 10]],
  ['least', [9, 10], [10.5, 11.5], [10.5, 12]],
  ['most', [10.5, 11.5], [9, 9.5], [10, 10.5]],
  ['least', [10, 10.5], [9, 10], [11, 12]],
  ['most', [10.5, 12], [9.5, 10.5], [8, 10]],
  ['least', [10.5, 11], [9.5, 10.5], [11, 12]],
  ['most', [11, 12], [9, 9.5], [10, 10.5]]
];

/** Of two lifts a hand that measures neither can tell which came farther where the other came no more than this part of it. A design value. */
const TOLD_APART = 0.75;

/** Whether the model and guides, by the hour and by half, all have the first bring the jig far more, or far less. */
function isSeenAlike(want: Want, [right, ...others]: readonly Seen[]): boolean {
  const right_m = travelsSeen_m(right);
  return others.every((other) =>
    travelsSeen_m(other).every((other_m, way) => {
      const [more_m, less_m] = want === 'most' ? [right_m[way], other_m] : [other_m, right_m[way]];
      return less_m <= TOLD_APART * more_m && more_m - less_m > MEASURES.travel_m.apart;
    })
  );
}

/** How far from along the straight line to the jig the tip swings in the middle of a lift, degrees. */
function acrossTheLine_deg({ water, start, rod }: SetupInput, [from, to]: Hours): number {
  const drop_m = water.depth_m + (rod?.pivot_height_m ?? 0);
  const line_deg = (Math.atan2(drop_m, start.bait_x_m) * 180) / Math.PI;
  return Math.abs(clockHourToDeg((from + to) / 2) + line_deg - 90);
}

const isLater = (one: Hours, other: Hours) => one[0] > other[0];
const length = ([from, to]: Hours) => to - from;

/** Why a lift brings the jig another way than the right one, as nobody else hears it; `isMore`: farther. */
function besideTheRight(one: Hours, right: Hours, isMore: boolean): string {
  const later = isLater(one, right);
  const swing = `more of the swing goes ${later ? 'along' : 'across'} the line`;
  const from = saidHour(one[0]);
  if (length(one) === length(right)) return `As long, but from ${from} ${swing}.`;
  const isLonger = length(one) > length(right);
  const longer = isLonger ? 'longer' : 'shorter';
  // What settles it comes last.
  if (isLonger !== later && isLonger === isMore)
    return `From ${from} ${swing}, but it’s ${longer}.`;
  const first = isLonger ? 'Longer' : 'Shorter';
  return `${first}, ${isLonger === later ? 'and' : 'but'} from ${from} ${swing}.`;
}

const saidLift = ([from, to]: Hours) => `from ${saidHour(from)} to ${saidHour(to)}`;

const hoursByTravel: Generator = {
  id: 'hour-of-most-travel',
  kind: 'choose',
  objective: 'clock',
  make: (random, share) => {
    const setup = drawGear(random);
    const hour_s = pick(random, [1.5, 2, 3]);
    const [want, right, ...others] = dealt(share, ROWS);
    const across_deg = acrossTheLine_deg(setup, right);
    // Which way the tip swings is the reason that is told: so it has to be the reason.
    const isReason = others.every(
      (one) => acrossTheLine_deg(setup, one) < across_deg === isLater(one, right)
    );
    if (!isReason) return null;
    const runOf = (one: Hours) => shownLift(setup, ...one, hour_s * length(one));
    const lifts = [right, ...others].map((one) => ({
      run: runOf(one),
      guides_ft: guides_ft(...one),
      isLift: true
    }));
    if (!isSeenAlike(want, lifts)) return null;
    // Close in it also leaves bottom and swings in: the tip's swing alone is then no reason.
    const swingsIn = lifts
      .map(({ run }) => figuresOf(shownScenarioOf(run)))
      .some(({ tip_m, travel_m }) => travel_m > tip_m);
    return chooseBy({
      ask: `${placeWords(setup)} {7 ft|2.1 m} rod, line tight. On its clock nine is level, and eight tips it down. You take ${saidSeconds(hour_s)} for each hour of lift. Which lift moves the jig ${want === 'most' ? 'farthest' : 'least'}?`,
      pick: want,
      measure: 'travel_m',
      contenders: shuffled(random, [right, ...others]).map((one) => ({
        id: `h${one[0] * 10}-${one[1] * 10}`,
        says: saidLift(one),
        reply: () => besideTheRight(one, right, want === 'least'),
        run: runOf(one)
      })),
      right: `Right. That’s the one with the ${want} swing along the line.`,
      explain: `Rod pointing down the line, a lift gets you nothing. Rod square to it, all of it counts: late on a flat line, earlier on a steep one. ${swingsIn ? 'A jig that leaves bottom also swings in, and comes farther. ' : ''}Guides see less than the model.`
    });
  }
};

export const hours = [hoursByTravel];
