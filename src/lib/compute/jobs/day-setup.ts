import { waterWith } from '../../course/lessons/fathomley';
import { GROUNDS, INCH_M, type GroundKind, type SetupInput } from '../../model';
import type { Band } from '../../scoring';
import { withOutfitGear, type OutfitGear } from '../../wire';

/** A jig in a day's water. */
export interface DayWater {
  /** Left out, the course's own with a jig of `mass_kg`. */
  gear?: OutfitGear;
  mass_kg?: number;
  depth_m: number;
  temperature_C: number;
  ground: GroundKind;
  /** How far out the jig lies. */
  out_m: number;
  /** From behind the angler. */
  wind_m_s?: number;
}

/** Slack of a line that looks just tight, where tests have not told it, m. */
const SLACK_M = INCH_M;

export function daySetup(water: DayWater): SetupInput {
  const { gear, mass_kg, depth_m, temperature_C, ground, out_m, wind_m_s = 0 } = water;
  const setup = waterWith({
    ...{ depth_m, temperature_C, mass_kg },
    bottom: levelBed(ground),
    start: { bait_x_m: out_m, slack_m: gear?.spread?.middle.slack_m ?? SLACK_M },
    more: { wind_m_s }
  });
  return gear ? withOutfitGear(setup, gear) : setup;
}

/** Without its stones and stems: a jig that climbs one is not lifted off the bottom by the hand. */
function levelBed(kind: GroundKind): SetupInput['bottom'] {
  const ground = GROUNDS[kind];
  const isLevel = !('stones' in ground) && !('stems' in ground);
  return isLevel ? { ground: { kind, seed: 11 } } : { friction: ground.friction };
}

/** A value and its give or take, as a card or a plan keeps them; null where there is none. */
export const readingOf = (band: Band | undefined): [number, number] | null =>
  band ? [rounded(band.nominal), rounded(band.half)] : null;

/** A millimetre, or a tenth of a second: a link carries no more letters than it must. */
export function rounded(value: number, digits = 3): number {
  return Number(value.toFixed(digits));
}
