import { restRow } from '../season-map';
import type { Retrieve } from '.';
import type { FishedWater } from './fitting';

/** Where and when a retrieve is used, with the wait of these fish in this water; of colder or warmer water than it says, how. */
export function useOn({ use, suits, byRow }: Retrieve, water: FishedWater): string {
  const row = restRow(water);
  const said = (byRow?.[row.id] ?? use).replace(
    /(?<=then wait )\d+ to \d+ seconds(: the warmer, the shorter)?/,
    row.pause
  );
  const { temperature_C } = water;
  const [from, to] = suits?.water_C ?? [temperature_C, temperature_C];
  if (temperature_C >= from && temperature_C <= to) return said;
  const how = said.replace(/^[^.:]*°C\}[^.:]*[.:] /, '');
  return how.charAt(0).toUpperCase() + how.slice(1);
}
