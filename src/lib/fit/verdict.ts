import type { FitResult } from './result';
import type { UnknownName } from '../scoring';

const NAMES: Record<UnknownName, string> = {
  reach_m: 'how far your rod reaches',
  elevation_deg: 'how high you really hold it',
  slack_m: 'your slack',
  drag_area_m2: 'the jig’s drag',
  lift_to_drag: 'how much it planes'
};
/** A measurement so many deviations off is one that no set-up explains. */
const UNEXPLAINED = 3;
/** Where there is one, others so far off are as doubtful: the fit gives way to all of them. */
const DOUBTFUL = 2;
/** Deviations so many times as wide as they were said to be are worth a word; a dozen tests scatter by a third. */
const SCATTERED = 1.4;

/** How many deviations a measurement of a test, counted from 0, is off. */
export interface Misfit {
  readonly test: number;
  readonly off: number;
}

/** What the tests say, in plain words, and what to test next. */
export function verdictOf(
  { unknowns, next }: Pick<FitResult, 'unknowns' | 'next'>,
  misfits: readonly Misfit[],
  scatter: number
): string {
  const names = Object.entries(unknowns) as [UnknownName, { told: boolean }][];
  const told = names.filter(([, { told }]) => told).map(([name]) => NAMES[name]);
  const not = names.filter(([, { told }]) => !told).map(([name]) => NAMES[name]);
  return [
    told.length > 0 ? `Your tests pin down ${listed(told)}.` : '',
    not.length > 0 ? `They don’t pin down ${listed(not)}.` : '',
    names.length === 0 ? 'You gave every number. There’s nothing left to fit.' : '',
    scatter > SCATTERED
      ? 'Your tests scatter more than their ± allows, so every range here is wider.'
      : '',
    unexplained(misfits),
    not.length > 0 && next.length > 0 ? `Next: ${instruction(next[0].move)}.` : ''
  ]
    .filter(Boolean)
    .join(' ')
    .replace(/^They do/, 'Your tests do');
}

function unexplained(misfits: readonly Misfit[]): string {
  if (!misfits.some(({ off }) => off > UNEXPLAINED)) return '';
  const doubtful = misfits.filter(({ off }) => off > DOUBTFUL).map(({ test }) => test + 1);
  const tests = [...new Set(doubtful)].sort((a, b) => a - b).map(String);
  const [name, them] = tests.length > 1 ? ['tests', 'them'] : ['test', 'it'];
  return `No set-up explains ${name} ${listed(tests)}: measure ${them} again before you use these numbers.`;
}

function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** "sweep 0 to 60 degrees in 3 seconds, measure how far and how high" */
export function instruction(move: FitResult['next'][number]['move']): string {
  if (move.kind !== 'lift' && move.kind !== 'sweep') return 'make the same move again';
  const { kind, from_deg, to_deg, duration_s } = move;
  const time = `${duration_s} second${duration_s === 1 ? '' : 's'}`;
  return `${kind} ${from_deg} to ${to_deg} degrees in ${time}, measure how far and how high`;
}
