import type { LawnHand, Ruler } from '$lib/practice';
import { formatLength, type Units } from '$lib/scoring';
import { lengthUnit } from '$lib/shell';
import type { LawnDrags } from '$lib/wire';
import type { HandRow } from './hands-strip';

/** The real rod above the screen, where there is a hand on the screen. */
export function handRows({ ratios, level }: LawnHand, ruler: Ruler | null): HandRow[] {
  const real = { name: 'Real rod', ratios, value: level.value, band: level.band };
  if (!ruler) return [real];
  const { bait, marks } = ruler;
  const onScreen = marks.map(({ bait_m, meant_m }) => bait_m / meant_m);
  return [real, { name: 'On the screen', ratios: onScreen, value: bait.value, band: bait.band }];
}

/** What the real rod does, and whether it can be told from the hand on the screen. */
export function lawnWords(
  meant_m: number,
  { level }: LawnHand,
  ruler: Ruler | null,
  units: Units
): string {
  const length = (ratio: number) => formatLength(ratio * meant_m, units);
  const real = `Means ${length(1)}, moves it ${length(level.value)}, give or take ${length(level.band)}.`;
  if (!ruler) return real;
  const apart = Math.abs(level.value - ruler.bait.value);
  if (apart <= Math.hypot(level.band, ruler.bait.band))
    return `${real} About the same as on the screen.`;
  const more = level.value > ruler.bait.value ? 'farther' : 'shorter';
  return `${real} That is ${length(apart)} ${more} than on the screen.`;
}

/** "12, 14, 11½ in": the numbers as they were read off. */
export function setText({ moved_m }: LawnDrags, units: Units): string {
  const unit = lengthUnit(units, false);
  return `${moved_m.map((m) => unit.shown(m)).join(', ')} ${unit.name}`;
}
