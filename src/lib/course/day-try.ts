import { fahrenheitToCelsius } from '../model';
import type { Challenge } from '../scoring';
import { saidOut } from './items/said';
import type { Day, DayRetrieve } from './day-choice';
import slack from './lessons/03-slack/challenges';
import { swum } from './retrieves/moves';
import map from './lessons/20-season-map/challenges';
import mood from './lessons/21-season-and-mood/challenges';

/** The task of the lessons that asks for each retrieve. */
const TASKS: Readonly<Record<DayRetrieve, string>> = {
  drag: 'dead-stick',
  'drag-hop': 'drag-wait-hop',
  strokes: 'two-strokes',
  shake: 'shake-in-place',
  swim: 'swim-at-a-height'
};

/** The lesson's own water, where the task names it: the day says another. */
const OWN_WATER = /^[^.]*°F[^.]*\. /;

/** Line reeled while it swims, m. */
const SWUM_LINE_M = 3.75;

/** The deeper, the slower, m/s: from one cast a steeper line lifts more. Fitted to the model from 20 to 25 ft. */
const swumPace = (depth_m: number) => 0.95 - 0.046 * depth_m;

/** The retrieve picked, to be tried by hand and in sight, in this day's water. */
export function dayTry({ degF, depth_m }: Day, retrieve: DayRetrieve): Challenge {
  const task = [...slack, ...map, ...mood].find(({ id }) => id === TASKS[retrieve]);
  if (!task) throw new RangeError(`no lesson has a task for ${retrieve}`);
  const temperature_C = fahrenheitToCelsius(degF);
  return {
    ...task,
    id: `${task.id}-${degF}-${Math.round(100 * depth_m)}`,
    ask: `${saidOut(depth_m)} deep. ${task.ask.replace(OWN_WATER, '')}`,
    setup: { ...task.setup, water: { depth_m, temperature_C } },
    visibility: 'seen',
    ...(retrieve === 'swim' && { reference: swum(SWUM_LINE_M, swumPace(depth_m)) })
  };
}
