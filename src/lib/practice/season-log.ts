import type { LogEntry } from '../wire';
import { countedShare, doOverlap, type CountedShare } from './counted-share';

/** What a log may be sorted by. */
export const LOG_SORTS = ['retrieve', 'pace', 'bottom', 'depth', 'jig', 'place', 'felt'] as const;
export type LogSort = (typeof LOG_SORTS)[number];

/** Spells that have something in common. */
export interface LogGroup {
  /** A name, or the middle of a band of depths, m. */
  key: string | number;
  spells: number;
  days: number;
  casts: number;
  bites: number;
  fish: number;
  /** Of its spells, those with a bite or more: casts of one spell are too alike to be counted each. */
  bitten: CountedShare;
}

/** Width of a band of depths, m: about five feet. */
const DEPTH_BAND_M = 1.524;

const KEYS: Record<LogSort, (entry: LogEntry) => readonly (string | number)[]> = {
  retrieve: ({ retrieve }) => [retrieve],
  pace: ({ pace }) => [pace],
  bottom: ({ ground }) => [ground],
  depth: ({ depth_m }) => [(Math.floor(depth_m / DEPTH_BAND_M) + 0.5) * DEPTH_BAND_M],
  jig: ({ jig }) => [jig],
  place: ({ place }) => (place === '' ? [] : [place]),
  felt: ({ felt }) => felt
};

/** The log in groups, most bitten first; of those alike the one that was fished more. */
export function logGroups(entries: readonly LogEntry[], sort: LogSort): LogGroup[] {
  const groups = new Map<string | number, LogEntry[]>();
  for (const entry of entries) {
    for (const key of KEYS[sort](entry)) groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  const sum = (all: readonly LogEntry[], of: (entry: LogEntry) => number) =>
    all.reduce((total, entry) => total + of(entry), 0);
  return [...groups]
    .map(([key, all]) => ({
      key,
      spells: all.length,
      days: new Set(all.map(({ on }) => on)).size,
      casts: sum(all, ({ casts }) => casts),
      bites: sum(all, ({ bites }) => bites),
      fish: sum(all, ({ fish }) => fish),
      bitten: countedShare(all.filter(({ bites }) => bites > 0).length, all.length)
    }))
    .sort((a, b) => b.bitten.share - a.bitten.share || b.spells - a.spells);
}

/** Whether the first of the groups is told apart from each of the others. */
export function isToldApart([first, ...others]: readonly LogGroup[]): boolean {
  return others.length > 0 && others.every((one) => !doOverlap(first.bitten, one.bitten));
}
