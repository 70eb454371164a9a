import { seasonRowNear } from '../season-map';
import type { Retrieve } from '.';

/** Where and when a retrieve is used, with the wait of this water's season, °C; of colder or warmer water than it says, how. */
export function useOn({ use, suits }: Retrieve, temperature_C: number): string {
  const said = use.replace(/(?<=then wait )\d+ to \d+ seconds/, seasonRowNear(temperature_C).pause);
  const [from, to] = suits?.water_C ?? [temperature_C, temperature_C];
  if (temperature_C >= from && temperature_C <= to) return said;
  const how = said.replace(/^[^.:]*°C\}[^.:]*[.:] /, '');
  return how.charAt(0).toUpperCase() + how.slice(1);
}
