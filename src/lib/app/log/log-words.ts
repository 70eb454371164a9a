import type { CountedShare, LogGroup, LogSort } from '$lib/practice';
import { isToldApart, logGroups } from '$lib/practice';
import { retrievesFor } from '$lib/course';
import { formatDepth, formatShare, formatTime, type Units } from '$lib/scoring';
import type { DayPlan, FeltSign, LogEntry, LogPace } from '$lib/wire';
import { firstWeight } from '$lib/course/plan';

export const PACE_NAMES: readonly { value: LogPace; name: string }[] = [
  { value: 'still', name: 'Still' },
  { value: 'slow', name: 'Slow' },
  { value: 'steady', name: 'Steady' },
  { value: 'quick', name: 'Quick' }
];
export const FELT_NAMES: readonly { value: FeltSign; name: string }[] = [
  { value: 'nothing', name: 'Nothing' },
  { value: 'bottom', name: 'Bottom' },
  { value: 'tap', name: 'Tap, thump' },
  { value: 'mush', name: 'Mush' },
  { value: 'weight gone', name: 'Weight gone' },
  { value: 'line moved', name: 'Line moved' },
  { value: 'snag', name: 'Snag' }
];
export const SORT_NAMES: readonly { value: LogSort; name: string }[] = [
  { value: 'retrieve', name: 'Retrieve' },
  { value: 'pace', name: 'Pace' },
  { value: 'depth', name: 'Depth' },
  { value: 'bottom', name: 'Bottom' },
  { value: 'jig', name: 'Jig' },
  { value: 'felt', name: 'Felt' },
  { value: 'place', name: 'Place' }
];

export function groupName({ key }: LogGroup, units: Units): string {
  return typeof key === 'number' ? `About ${formatDepth(key, units)}` : key;
}

/** "2 of 5 (15 to 74%)" */
export function shareText({ hits, of, interval90: [least, most] }: CountedShare): string {
  return `${hits} of ${of} (${Math.round(least * 100)} to ${formatShare(most)})`;
}

/** Fewer stops are no table: what was logged stands above it. */
export const LEAST_STOPS = 3;

/** How little so few days prove. */
export function proofText(groups: readonly LogGroup[], days: number): string {
  const so = `${days} ${days === 1 ? 'day' : 'days'} on the water.`;
  if (groups.length < 2) return `${so} Nothing to compare yet.`;
  return isToldApart(groups)
    ? `${so} The first one stands out. Try it again another day.`
    : `${so} The bars overlap: this log can’t tell them apart yet.`;
}

/** "1/2 oz jig: drag, steady, 2 bites in 10 casts, felt tap and mush" */
export function spellText({ retrieve, pace, casts, bites, fish, jig, felt }: LogEntry): string {
  const bitten = bites === 0 ? 'no bites' : `${bites} ${bites === 1 ? 'bite' : 'bites'}`;
  const landed = fish === 0 ? '' : `, ${fish} fish`;
  const told = felt.length === 0 ? '' : `, felt ${felt.join(' and ')}`;
  return `${jig}: ${retrieve}, ${pace}, ${bitten}${landed} in ${casts} ${casts === 1 ? 'cast' : 'casts'}${told}`;
}

/** What the plan said beside what was fished by it, a line each. */
export function planComparison(
  plan: DayPlan,
  entries: readonly LogEntry[],
  units: Units
): { said: string; fished: string }[] {
  const fished = entries.filter((one) => one.plan === plan.id);
  const first = plan.weights[firstWeight(plan.weights, plan.asked)];
  const lines = [
    { said: `Depth ${formatDepth(plan.asked.depth_m, units)}`, fished: depthsText(fished, units) },
    { said: `Jig: ${first.name}`, fished: listed(fished.map(({ jig }) => jig)) },
    { said: `First: ${retrievesFor(plan.asked)[0].name}`, fished: bittenText(fished) }
  ];
  const timed = fished.flatMap((one) =>
    sameJig(one, first) && isSameDepth(one, plan) ? one.drops_s : []
  );
  if (timed.length > 0) lines.push(countLine(first.fall, timed));
  return lines;
}

const sameJig = (entry: LogEntry, first: DayPlan['weights'][number]) =>
  first.outfit ? entry.outfit === first.outfit : entry.mass_kg === first.mass_kg;

/** Within this part of the planned depth a count can be held against the plan's. */
const SAME_DEPTH = 0.1;
const isSameDepth = ({ depth_m }: LogEntry, { asked }: DayPlan) =>
  Math.abs(depth_m / asked.depth_m - 1) <= SAME_DEPTH;

function countLine([fall_s, half_s]: readonly [number, number], timed: readonly number[]) {
  const mean_s = timed.reduce((sum, one) => sum + one, 0) / timed.length;
  const off_s = mean_s - fall_s;
  const judged =
    Math.abs(off_s) <= Math.max(1, half_s)
      ? 'as planned'
      : off_s > 0
        ? 'slower: more skirt, or deeper than you think'
        : 'quicker: less skirt, or shallower than you think';
  return {
    said: `Count ${formatTime(Math.round(fall_s))} ± ${Math.max(1, Math.round(half_s))}`,
    fished: `${formatTime(Math.round(mean_s))} in ${timed.length} ${timed.length === 1 ? 'drop' : 'drops'}: ${judged}`
  };
}

function depthsText(entries: readonly LogEntry[], units: Units): string {
  const depths = entries.map(({ depth_m }) => depth_m);
  const [least, most] = [Math.min(...depths), Math.max(...depths)];
  const text = formatDepth(least, units);
  return formatDepth(most, units) === text ? text : `${text} to ${formatDepth(most, units)}`;
}

/** "drag 2 of 10 casts bitten, hop 0 of 20 casts bitten" */
function bittenText(entries: readonly LogEntry[]): string {
  return logGroups(entries, 'retrieve')
    .map(({ key, bites, casts }) => `${key} ${bites} of ${casts} casts bitten`)
    .join(', ');
}

const listed = (all: readonly string[]) => [...new Set(all)].join(', ');
