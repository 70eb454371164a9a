import type { Challenge } from './challenge';
import { formatLength, formatTime, type Units } from './display';
import { COUNTED_FROM_S, CRANK_M, type SpokenStep } from './spoken-move';

/** A turn done in less is a snap, s; more, up to what is counted, is quick. */
const SNAP_S = 0.45;
const NINE = 9;
const HOUR_DEG = 30;
const HALF_HOUR_DEG = HOUR_DEG / 2;

const TIP = 'the tip';

type Plane = Challenge['plane'];

/** Told by quarters: up to here it is a quarter, and from there a half, s. */
const QUARTER_TO_S = 0.35;
const HALF_TO_S = 0.65;

/**
 * Steps that are one as a sentence: "Snap the tip up 1 ft 2 in, to 10:30 on the clock, in about ¼ second."
 * `isAfterPull`: "After the lift, lower the tip 1 ft, in 2 s."
 */
export function stepWords(
  plane: Plane,
  steps: readonly SpokenStep[],
  units: Units,
  isAfterPull = false
): string {
  const when = isAfterPull ? `after the ${plane}, ` : '';
  const said = when + steps.map((step) => wordsOf(step, plane, units)).join(', then ');
  return `${said[0].toUpperCase()}${said.slice(1)}.`;
}

function wordsOf(step: SpokenStep, plane: Plane, units: Units): string {
  switch (step.kind) {
    case 'rest':
      if (step.time_s < COUNTED_FROM_S) return 'rest a moment';
      return `count to ${step.time_s}${step.isSpare ? ', to be sure' : ''}`;
    case 'bite':
      return 'wait for the bite';
    case 'reel':
      // No eye counts part of a turn: the buttons tell when the slack is gone.
      return step.isToLight
        ? 'hold Reel in until the next button lights'
        : `reel in about ${cranks(step.line_m)} of the handle`;
    case 'begin':
      return step.isAway ? 'lift the rod' : 'lower the rod';
    case 'clock':
      return turnWords(
        step,
        [`lift ${TIP}`, `lower ${TIP}`],
        `to ${clockTime(step.to_deg)}`,
        formatLength(step.way_m, units)
      );
    case 'turn': {
      const verbs = plane === 'lift' ? ['lift @', 'lower @'] : ['move @', 'swing @ forward'];
      const named = verbs.map((verb) => verb.replace('@', TIP));
      return turnWords(step, named, formatLength(step.way_m, units));
    }
  }
}

type Turn = Extract<SpokenStep, { kind: 'clock' | 'turn' }>;

function turnWords(
  { isAway, time_s }: Turn,
  [away, back]: readonly string[],
  where: string,
  way = where
): string {
  const verb = isAway ? away : back;
  const isPlace = where.startsWith('to ');
  if (time_s >= COUNTED_FROM_S) {
    const time = formatTime(time_s);
    if (isPlace && !isAway) return `${verb} with the jig, ${where}, in ${time}`;
    return isPlace ? `${verb} ${where} in ${time}` : `${verb} ${where}, in ${time}`;
  }
  // Down with a jig that falls is a matter of the eye.
  if (!isAway) return isPlace ? `${verb} with the jig, ${where}` : `${verb} ${where} quickly`;
  const moved = time_s < SNAP_S ? `snap ${TIP}${isPlace ? ' up' : ''}` : verb;
  return `${moved} ${way}${isPlace ? `, ${where}` : ''}, in ${shortTime(time_s)}`;
}

function shortTime(s: number): string {
  if (s <= QUARTER_TO_S) return 'about ¼ second';
  return s <= HALF_TO_S ? 'about ½ second' : 'under a second';
}

/** Where a lifted tip stands, read as on a clock from the side: 45° is 10:30, 35° a little above ten. */
function clockTime(deg: number): string {
  const halves = Math.round(deg / HALF_HOUR_DEG);
  const off_deg = deg - halves * HALF_HOUR_DEG;
  const hour = NINE + Math.floor(halves / 2);
  // Beside seconds it would be a time of day.
  const place = halves % 2 === 0 ? `${hour} o’clock` : `${hour}:30 on the clock`;
  return off_deg === 0 ? place : `a little ${off_deg > 0 ? 'above' : 'below'} ${place}`;
}

/** "half a turn", "a turn and a half", "7 turns". */
function cranks(line_m: number): string {
  const halves = Math.round((2 * line_m) / CRANK_M);
  const whole = Math.floor(halves / 2);
  const isOdd = halves % 2 === 1;
  if (whole === 0) return 'half a turn';
  if (whole === 1) return isOdd ? 'a turn and a half' : 'a turn';
  return `${whole}${isOdd ? '½' : ''} turns`;
}
