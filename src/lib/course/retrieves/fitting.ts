import { RETRIEVES, type Retrieve } from '.';

/** What decides which retrieves suit a day. */
export interface FishedWater {
  temperature_C: number;
  fish: 'slow' | 'active' | 'unknown';
}

/**
 * Retrieves for this water and these fish, the first to be taught first. The drag leads where it
 * suits, since the others build on it; then what is meant for these fish, then the narrower range.
 */
export function retrievesFor({ temperature_C, fish }: FishedWater): Retrieve[] {
  const fitting = RETRIEVES.filter(({ suits }) => {
    if (!suits || temperature_C < suits.water_C[0] || temperature_C > suits.water_C[1])
      return false;
    return fish === 'unknown' || suits.fish === 'any' || suits.fish === fish;
  });
  const rank = ({ name, suits }: Retrieve): [number, number] => [
    name === 'drag' ? 0 : suits?.fish === fish ? 1 : 2,
    suits ? suits.water_C[1] - suits.water_C[0] : 0
  ];
  return fitting.sort((a, b) => rank(a)[0] - rank(b)[0] || rank(a)[1] - rank(b)[1]);
}
