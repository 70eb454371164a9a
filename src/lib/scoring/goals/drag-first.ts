import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { NO_MOVE_M } from '../run-measures';
import { drawnFirst } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** Less than half of it is no drag: nothing. */
const REACH_PART = 0.5;

/** How far the bait is dragged before the bite or the strike, at least, m. */
export const dragFirst = goalKind({
  schema: v.strictObject({ kind: v.literal('drag_first'), least_m: numberIn(0.01, 30), weight }),
  figure: {
    unit: 'm',
    name: 'Dragged before the strike',
    less: 'too short',
    more: 'too far',
    asked: ({ least_m }) => [least_m, null],
    raise: (off) => `Move it ${off} farther first.`,
    lower: (off) => `Drag it ${off} less.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, run) => drawnFirst(run),
  share: ({ least_m }, value) => fading(least_m - value, REACH_PART * least_m),
  words: ({ least_m }, value, units) => ({
    name: 'Dragged first',
    asked: `${formatLength(least_m, units)} or more`,
    reached: formatBeside(value, [least_m, Infinity], (m) => formatLength(m, units))
  }),
  miss: ({ least_m }, value, units, { events }) => {
    const length = (m: number) => formatLength(m, units);
    if (value < NO_MOVE_M) return 'you never moved it first';
    const moved = `you moved it ${formatBeside(value, [least_m, Infinity], length)}`;
    const isBitten = events.some(({ kind }) => kind === 'bite');
    return `${moved} ${isBitten ? 'before the bite' : 'first'}, not ${length(least_m)}`;
  },
  advice: (_, value) =>
    value < NO_MOVE_M ? 'Drag it before you wait' : 'Drag it farther before you wait',
  step: () => 'pull'
});
