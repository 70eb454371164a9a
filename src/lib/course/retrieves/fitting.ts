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

/** Water under this, °C, has drags with a short hop, 60 °F as the season map has it. */
const COOL_TO_C = 15.6;
/** And under this, fish that hardly move, 50 °F. */
const COLD_TO_C = 10;

/**
 * Retrieves for this water and these fish, the first to be taught first. The drag leads where it
 * suits, since the others build on it; then what is meant for these fish, then the narrower range. In
 * grass and brush there is none, and what comes through leads in any water.
 */
export function retrievesFor(water: FishedWater): Retrieve[] {
  const { temperature_C, fish, ground } = water;
  const lifted = ground && LIFTED_OVER[ground];
  const fitting = RETRIEVES.filter((retrieve) => {
    if (retrieve.name === lifted) return true;
    return isFor(retrieve, water) && !(lifted && retrieve.name === 'drag');
  });
  const leads = lifted ?? 'drag';
  const isCool = temperature_C < COOL_TO_C;
  const isCold = temperature_C < COLD_TO_C;
  const place = ({ name, suits }: Retrieve) => {
    if (name === leads) return 0;
    // Cold fish hardly move: what is for active ones comes last unless they are known to be.
    if (isCold && fish === 'unknown' && suits?.fish === 'active') return 3;
    return suits?.fish === fish || (name === 'hop' && isCool && fish !== 'slow') ? 1 : 2;
  };
  const rank = (one: Retrieve): [number, number] => [
    place(one),
    one.suits ? one.suits.water_C[1] - one.suits.water_C[0] : 0
  ];
  return fitting.sort((a, b) => rank(a)[0] - rank(b)[0] || rank(a)[1] - rank(b)[1]);
}

function isFor({ suits }: Retrieve, { temperature_C, fish }: FishedWater): boolean {
  if (!suits) return false;
  const { also = [] } = suits;
  const isIn = ([from, to]: readonly [number, number]) =>
    from <= temperature_C && temperature_C <= to;
  const isForFish = (one: typeof suits.fish) => one === 'any' || one === fish;
  if (isIn(suits.water_C) && (fish === 'unknown' || isForFish(suits.fish))) return true;
  return also.some((one) => isIn(one.water_C) && isForFish(one.fish));
}
