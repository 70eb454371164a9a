import { unknownText } from '$lib/app/gear';
import { LOOK_AT_Z, OFF_AT_Z, type PooledName } from '$lib/fit';
import { formatLength, type Units } from '$lib/scoring';
import type { MeasuredJig, TableJig } from '$lib/wire';

type Ends = readonly [number, number];

/** "5.1 cm², 4.4 cm² to 5.9 cm²" */
export function valueText(
  name: PooledName,
  one: { estimate: number; interval90: Ends } | null,
  units: Units
): string {
  if (!one) return 'not pinned down by these tests';
  const text = (value: number) => unknownText(name, value, units);
  const [low, high] = one.interval90;
  return `${text(one.estimate)} (${text(low)} to ${text(high)})`;
}

/** Whether they agree, and whose value to look at. */
export function agreementText({ pooled, measured }: TableJig, name: PooledName): string {
  const all = pooled[name];
  const told = measured.filter(({ numbers }) => numbers[name]);
  if (!all)
    return told.length === 1
      ? 'One session pins it down. Two make a table.'
      : 'No session pins it down.';
  if (all.agrees) return `They agree (Birge ratio ${all.birge.toFixed(1)}).`;
  const off = told.filter(({ numbers }) => Math.abs(numbers[name]?.z ?? 0) >= LOOK_AT_Z);
  const who = off.map(measurerName).join(', ');
  return `They differ by more than their errors allow (Birge ratio ${all.birge.toFixed(1)}).${who ? ` Look at: ${who}.` : ''}`;
}

/** "off" beyond three deviations from the others, "look" beyond two. */
export function markOfZ(z: number | null | undefined): '' | 'look' | 'off' {
  const far = Math.abs(z ?? 0);
  if (far >= OFF_AT_Z) return 'off';
  return far >= LOOK_AT_Z ? 'look' : '';
}

export const measurerName = ({ by }: Pick<MeasuredJig, 'by'>): string => by || 'No name';

/** "6 tests, 2 filmed, 3 drops timed, ± 7 cm" */
export function howText({ tests, filmed, drops, error_m }: MeasuredJig, units: Units): string {
  return [
    `${tests} ${tests === 1 ? 'test' : 'tests'}`,
    filmed > 0 ? `${filmed} filmed` : 'by hand',
    drops > 0 && `${drops} ${drops === 1 ? 'drop' : 'drops'} timed`,
    error_m !== null && `± ${formatLength(error_m, units)}`
  ]
    .filter(Boolean)
    .join(', ');
}
