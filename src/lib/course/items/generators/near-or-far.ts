import type { SetupInput } from '../../../model';
import { dealt, drawGear, ft, inch, shuffled } from '../draw';
import type { Generator } from '../generator';
import { MEASURES } from '../measures';
import { shownLift } from '../moves';
import { chooseBy } from '../rank-item';
import { saidOut, saidSeconds, saidWeight } from '../said';
import { heightSeen_m, quickSaid } from './seen-by-guides';

/** How far out a jig sits, ft, and the time an hour of lift takes, s: whole seconds, as one counts them. */
interface Far {
  feet: number;
  s: number;
}

type Want = 'most' | 'least';
type Said = readonly [feet: number, s: number];

/**
 * The right one, and the two beside it. Each pair of figures is right in about one of three questions that
 * have it, and so is each distance and each pace: none is known by its numbers. Nor is any row: the right one
 * is never both closest or farthest and quickest or slowest.
 */
const ROWS: readonly (readonly [Want, Said, Said, Said])[] = [
  ['least', [25, 4], [20, 2], [30, 1]],
  ['most', [20, 2], [40, 3], [50, 1]],
  ['least', [25, 4], [20, 3], [35, 1]],
  ['most', [20, 2], [50, 1], [60, 3]],
  ['least', [30, 4], [20, 3], [40, 1]],
  ['most', [20, 3], [25, 4], [60, 2]],
  ['least', [35, 4], [20, 3], [50, 1]],
  ['most', [20, 3], [30, 4], [50, 2]],
  ['least', [40, 3], [20, 2], [25, 4]],
  ['most', [25, 3], [35, 4], [60, 2]],
  ['least', [40, 4], [25, 3], [50, 1]],
  ['most', [25, 3], [40, 4], [50, 2]],
  ['least', [50, 2], [20, 3], [40, 1]],
  ['most', [30, 1], [25, 3], [60, 2]],
  ['least', [60, 2], [25, 4], [40, 1]],
  ['most', [30, 3], [40, 4], [60, 2]],
  ['least', [60, 2], [25, 3], [50, 1]],
  ['most', [35, 1], [30, 3], [60, 3]],
  ['least', [60, 2], [30, 3], [35, 1]],
  ['most', [40, 1], [30, 4], [60, 2]],
  ['least', [60, 3], [25, 4], [30, 1]],
  ['most', [50, 1], [35, 4], [60, 2]],
  ['least', [60, 3], [20, 2], [25, 4]],
  ['most', [50, 1], [40, 3], [60, 3]]
];

/** Why a lift gets the jig to another height than the right one, as nobody else hears it; `isMore`: higher. */
function besideTheRight(one: Far, right: Far, isMore: boolean): string {
  const isFlatter = one.feet > right.feet;
  const line = `line is ${isFlatter ? 'flatter' : 'steeper'} at ${saidOut(ft(one.feet))}`;
  const isSlower = one.s > right.s;
  const hand = `${saidSeconds(one.s)} is ${isSlower ? 'slower' : 'quicker'}`;
  if (isFlatter === isSlower)
    return `The ${line}, and ${hand}: both get it up ${isFlatter ? 'less' : 'more'}.`;
  return `The ${line}, and ${hand}: the ${isFlatter === isMore ? 'pace' : 'line'} wins, so it ${isMore ? 'goes higher' : 'doesn’t go as high'}.`;
}

/** Why the right one is: by its line or by its hand, as no row has it first in both. */
function whyRight(want: Want, right: Far, all: readonly Far[]): string {
  if (want === 'most')
    return all.every(({ feet }) => feet >= right.feet)
      ? 'Right. Close in, the steep line beats the quicker hand.'
      : 'Right. It’s the quickest, and that beats a steeper line.';
  return all.every(({ feet }) => feet <= right.feet)
    ? 'Right. The line’s flattest there, and you’re slow enough.'
    : 'Right. It’s the slowest, and that beats a flatter line.';
}

const liftOf = (setup: SetupInput, { feet, s }: Far) =>
  shownLift({ ...setup, start: { ...setup.start, bait_x_m: ft(feet) } }, 10, 11, s);

/** Whether guides, who see a quick lift go higher, would choose the first one, too. */
function isSeenAlike(setup: SetupInput, want: Want, all: readonly Far[]): boolean {
  const [right_m, ...others_m] = all.map((one) =>
    heightSeen_m({ run: liftOf(setup, one), hour_s: one.s })
  );
  const sign = want === 'most' ? 1 : -1;
  return others_m.every((other_m) => sign * (right_m - other_m) > MEASURES.peak_height_m.apart);
}

const nearOrFar: Generator = {
  id: 'near-or-far',
  kind: 'choose',
  objective: 'clock',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(0.5) });
    const [want, ...said] = dealt(share, ROWS);
    const all = said.map(([feet, s]): Far => ({ feet, s }));
    if (!isSeenAlike(setup, want, all)) return null;
    const [right] = all;
    const idOf = ({ feet, s }: Far) => `f${feet}-s${s}`;
    const draft = chooseBy({
      ask: `${saidOut(setup.water.depth_m)} of water, a ${saidWeight(setup.bait.mass_kg)} jig, {7 ft|2.1 m} rod. You lift from 10 to 11 o’clock. Which of these ${want === 'most' ? 'gets it highest' : 'keeps it closest to bottom'}?`,
      pick: want,
      measure: 'peak_height_m',
      contenders: shuffled(random, all).map((one) => ({
        id: idOf(one),
        says: `${saidOut(ft(one.feet))} out, in ${saidSeconds(one.s)}`,
        printed: [one.feet, one.s],
        reply: () => besideTheRight(one, right, want === 'least'),
        run: liftOf(setup, one)
      })),
      right: whyRight(want, right, all),
      explain: `As the jig gets close: go slower, keep the tip lower, or tie on more weight.${quickSaid(all.map(({ s }) => ({ hour_s: s })))}`
    });
    return draft?.answer.key === idOf(right) ? draft : null;
  }
};

export const distances = [nearOrFar];
