import { waterWith } from '../../course/lessons/fathomley';
import { GROUNDS, INCH_M, type GroundKind, type SetupInput } from '../../model';
import type { Band } from '../../scoring';
import { withOutfitGear, type OutfitGear, type Wind } from '../../wire';

/** What a day's wind is to the model, m/s: 7 and 18 mph. Common practice, no source. */
export const WIND_M_S: Record<Wind, number> = { calm: 0, breeze: 3, strong: 8 };
/** From behind and from ahead: which of them lifts sooner depends on the line. */
export const windsOf = (wind: Wind) =>
  WIND_M_S[wind] === 0 ? [0] : [WIND_M_S[wind], -WIND_M_S[wind]];

/** Part of the cast at which the moves of a plan and of a card are worked out: the first third is fished. */
const WORKED_PART = 0.7;
export const workedAt_m = (out_m: number) => WORKED_PART * out_m;

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
export function levelBed(kind: GroundKind): SetupInput['bottom'] {
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
