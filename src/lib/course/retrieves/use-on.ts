import { seasonRowNear } from '../season-map';
import type { Retrieve } from '.';

/** Where and when a retrieve is used, with the wait of this water's season, °C. */
export const useOn = ({ use }: Retrieve, temperature_C: number): string =>
  use.replace(/(?<=then wait )\d+ to \d+ seconds/, seasonRowNear(temperature_C).pause);
