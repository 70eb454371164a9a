import type { GroundKind } from '../../model';
import { RETRIEVES, type Retrieve } from '.';

/** What decides which retrieves suit a day. */
export interface FishedWater {
  temperature_C: number;
  fish: 'slow' | 'active' | 'unknown';
  ground?: GroundKind;
}

/** Bottoms in which a dragged jig balls up or hangs, and the retrieve that leads there. Common practice, no source. */
const LIFTED_OVER: Partial<Record<GroundKind, string>> = {
  grass: 'hop',
  brush: 'lift and follow down'
};

/** How fast a drag may be is no question where a drag balls up or hangs. */
export const isDragged = (ground: GroundKind): boolean => !(ground in LIFTED_OVER);

/**
 * Retrieves for this water and these fish, the first to be taught first. The drag leads where it
 * suits, since the others build on it; then what is meant for these fish, then the narrower range. In
 * grass and brush there is none, and what comes through leads in any water.
 */
export function retrievesFor({ temperature_C, fish, ground }: FishedWater): Retrieve[] {
  const lifted = ground && LIFTED_OVER[ground];
  const fitting = RETRIEVES.filter(({ name, suits }) => {
    if (name === lifted) return true;
    if (!suits || temperature_C < suits.water_C[0] || temperature_C > suits.water_C[1])
      return false;
    if (lifted && name === 'drag') return false;
    return fish === 'unknown' || suits.fish === 'any' || suits.fish === fish;
  });
  const leads = lifted ?? 'drag';
  const place = ({ name, suits }: Retrieve) => {
    if (name === leads) return 0;
    return suits?.fish === fish ? 1 : 2;
  };
  const rank = (one: Retrieve): [number, number] => [
    place(one),
    one.suits ? one.suits.water_C[1] - one.suits.water_C[0] : 0
  ];
  return fitting.sort((a, b) => rank(a)[0] - rank(b)[0] || rank(a)[1] - rank(b)[1]);
}
