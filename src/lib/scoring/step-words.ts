import type { Challenge } from './challenge';
import { formatLength, formatTime, type Units } from './display';
import { COUNTED_FROM_S, type SpokenStep } from './spoken-move';

/** More steps than this nobody keeps in mind. */
const MOST_STEPS = 5;
/** A turn done in less is a snap, s; more, up to what is counted, is quick. */
const SNAP_S = 0.45;
const NINE = 9;
const HOUR_DEG = 30;
const HOUR_MIN = 60;

const TIP = 'the tip';

type Plane = Challenge['plane'];

/** "Snap the tip up to 10:30 on the clock, then lower it quickly to 10 o’clock."; null where that is too much to keep in mind. */
export function stepWords(plane: Plane, all: readonly SpokenStep[], units: Units): string | null {
  const { steps, times } = repeated(all);
  if (steps.length > MOST_STEPS) return null;
  const said = inOrder(steps.map((step) => wordsOf(step, plane, units)));
  const often = times > 1 ? ` Do that ${times} times.` : '';
  return `${said[0].toUpperCase()}${said.slice(1)}.${often}`;
}

/** One after the other; what turns is named once. */
function inOrder(all: readonly string[]): string {
  const first = all.findIndex((one) => one.includes(TIP));
  const named = all.map((one, i) => (i > first ? one.replace(TIP, 'it') : one));
  return [...named.slice(0, -1), named.length > 1 ? `then ${named.at(-1)}` : named[0]].join(', ');
}

function wordsOf(step: SpokenStep, plane: Plane, units: Units): string {
  switch (step.kind) {
    case 'rest':
      return step.time_s < COUNTED_FROM_S ? 'rest a moment' : `count to ${step.time_s}`;
    case 'bite':
      return 'wait for the bite';
    case 'reel':
      return `reel in ${formatLength(step.line_m, units)}${step.time_s < COUNTED_FROM_S ? '' : ' without a stop'}`;
    case 'begin':
      return step.isAway ? 'lift the rod' : 'lower the rod';
    case 'clock':
      return turnWords(step, [`lift ${TIP}`, `lower ${TIP}`], `to ${clockTime(step.to_deg)}`);
    case 'turn': {
      const verbs = plane === 'lift' ? ['lift @', 'lower @'] : ['move @', 'swing @ back'];
      const named = verbs.map((verb) => verb.replace('@', TIP));
      return turnWords(step, named, formatLength(step.way_m, units));
    }
  }
}

type Turn = Extract<SpokenStep, { kind: 'clock' | 'turn' }>;

function turnWords(
  { isAway, time_s }: Turn,
  [away, back]: readonly string[],
  where: string
): string {
  const verb = isAway ? away : back;
  if (time_s >= COUNTED_FROM_S) return `${verb} ${where} in ${formatTime(time_s)}`;
  const isPlace = where.startsWith('to ');
  if (isAway && time_s < SNAP_S) return `snap ${TIP} ${isPlace ? 'up ' : ''}${where}`;
  return isPlace ? `${verb} quickly ${where}` : `${verb} ${where} quickly`;
}

/** Where a lifted tip stands, read as on a clock from the side: 45° is 10:30. */
function clockTime(deg: number): string {
  const minutes = Math.round((deg / HOUR_DEG) * HOUR_MIN);
  const hour = NINE + Math.floor(minutes / HOUR_MIN);
  const past = minutes % HOUR_MIN;
  // Beside seconds it would be a time of day.
  return past === 0 ? `${hour} o’clock` : `${hour}:${String(past).padStart(2, '0')} on the clock`;
}

/** The shortest run of steps of which all of them are repeats; the last may lack its rest. */
function repeated(all: readonly SpokenStep[]): { steps: readonly SpokenStep[]; times: number } {
  for (let length = 1; length < all.length; length++) {
    const isRepeat = all.every((step, i) => isAlike(step, all[i % length]));
    const times = Math.ceil(all.length / length);
    const lacksRest = all.length % length === 0 || all.length % length === length - 1;
    if (isRepeat && lacksRest && times > 1) return { steps: all.slice(0, length), times };
  }
  return { steps: all, times: 1 };
}

function isAlike(a: SpokenStep, b: SpokenStep): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
