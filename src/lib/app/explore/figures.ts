import type { RunFigures } from '$lib/compute/jobs/figures';
import { FOOT_M, INCH_M } from '$lib/model';
import { formatLength, formatShare, formatTime, type Units } from '$lib/scoring';
import type { AxisName } from './axes';

export type FigureName = keyof RunFigures | 'limit_m_s' | 'fall_s';

/** Which job makes it: those of one run come together. */
export type ChartKind = 'runs' | 'limits' | 'falls';

/** One way to number an axis: the first whose `upTo` holds what is drawn is taken. */
interface Numbering {
  /** In SI. */
  upTo: number;
  size: number;
  unit: string;
  /** What the numbers may go up by, in `unit`. */
  steps: readonly number[];
}

interface Figure {
  name: string;
  kind: ChartKind;
  axes: readonly AxisName[];
  text: (value: number, units: Units) => string;
  numbering: Record<Units, readonly Numbering[]>;
  /** What is numbered along the side, where it is not the figure itself; Infinity is not drawn. */
  side?: (value: number, units: Units) => number;
  /** What is drawn at the least, SI: what hardly moves is not blown up to fill the chart. */
  least: number;
  /** Nothing lies above it. */
  most?: number;
}

const OF_RUNS = [
  'tip',
  'hour',
  'pace',
  'weight',
  'depth',
  'cast',
  'line',
  'slack',
  'planing',
  'wind'
] as const satisfies AxisName[];

const LENGTH: Figure['numbering'] = {
  imperial: [
    { upTo: 2 * FOOT_M, size: INCH_M, unit: 'in', steps: [1, 2, 3, 6] },
    { upTo: Infinity, size: FOOT_M, unit: 'ft', steps: [1, 2, 5, 10] }
  ],
  metric: [
    { upTo: 1, size: 0.01, unit: 'cm', steps: [1, 2, 5, 10, 20] },
    { upTo: Infinity, size: 1, unit: 'm', steps: [0.5, 1, 2, 5] }
  ]
};
const alike = (numbering: Numbering): Figure['numbering'] => {
  return { imperial: [numbering], metric: [numbering] };
};

/** The tip's way of a drag whose limit is looked for, m: as the cards have it. */
export const LIMIT_TIP_M: Record<Units, number> = { imperial: 2 * FOOT_M, metric: 0.6 };

/** "2 ft in 2½ seconds": in halves, and no quicker than the limit. */
function limitText(m_s: number, units: Units): string {
  const tip_m = LIMIT_TIP_M[units];
  const halves = Math.ceil((2 * tip_m) / m_s - 1e-9);
  const seconds = `${halves > 1 ? Math.floor(halves / 2) : ''}${halves % 2 === 1 ? '½' : ''}`;
  return `${formatLength(tip_m, units)} in ${seconds} ${halves > 2 ? 'seconds' : 'second'}`;
}

export const FIGURES: Record<FigureName, Figure> = {
  travel_m: {
    name: 'How far it goes',
    kind: 'runs',
    axes: OF_RUNS,
    text: (m, units) => formatLength(m, units),
    numbering: LENGTH,
    least: 0.3
  },
  peak_height_m: {
    name: 'How high it gets',
    kind: 'runs',
    axes: OF_RUNS,
    text: (m, units) => formatLength(m, units),
    numbering: LENGTH,
    least: 0.05
  },
  contact: {
    name: 'On the bottom while it moves',
    kind: 'runs',
    axes: OF_RUNS,
    text: (share) => formatShare(share),
    numbering: alike({ upTo: Infinity, size: 0.01, unit: '%', steps: [25] }),
    least: 1,
    most: 1
  },
  limit_m_s: {
    name: 'Quickest drag that stays down',
    kind: 'limits',
    // Not how much it rides up: a limit leaves room for all of that.
    axes: ['weight', 'depth', 'cast', 'wind', 'slack', 'line'],
    text: limitText,
    // As it is said, and as the boat card has it: in how many seconds the tip may go so far.
    side: (m_s, units) => LIMIT_TIP_M[units] / m_s,
    numbering: {
      imperial: [{ upTo: Infinity, size: 1, unit: 'seconds for 2 ft', steps: [0.5, 1, 2] }],
      metric: [{ upTo: Infinity, size: 1, unit: 'seconds for 60 cm', steps: [0.5, 1, 2] }]
    },
    least: 2
  },
  fall_s: {
    name: 'How long it falls',
    kind: 'falls',
    axes: ['depth'],
    text: (s) => formatTime(s),
    numbering: alike({ upTo: Infinity, size: 1, unit: 's', steps: [1, 2, 5, 10, 20] }),
    least: 5
  }
};

const MOST_STEPS = 6;

/** Even, round numbers from 0 past the most that is drawn. */
export function numbersFor(name: FigureName, drawn: number, units: Units) {
  const { numbering, least, most = Infinity } = FIGURES[name];
  const top = Math.min(most, Math.max(least, drawn));
  const ways = numbering[units];
  const { size, unit, steps } = ways.find(({ upTo }) => top <= upTo) ?? ways[ways.length - 1];
  const step = steps.find((one) => top / size / one <= MOST_STEPS) ?? steps[steps.length - 1];
  const count = Math.ceil(top / size / step - 1e-9);
  return {
    unit,
    values: Array.from({ length: count + 1 }, (_, i) => {
      return { value: i * step * size, text: `${Number((i * step).toFixed(2))}` };
    })
  };
}
