import { levelBed } from '$lib/compute/jobs/day-setup';
import { fahrenheitToCelsius, FOOT_M, groundOf, parseSetup, type Setup } from '$lib/model';
import { gearOf, setupOf } from '$lib/sandbox/gear';
import type { Units } from '$lib/scoring';
import type { Settings, WaterNow } from '$lib/wire';

const FIRST: Record<Units, WaterNow> = {
  imperial: waterOf(20 * FOOT_M, 60 * FOOT_M, fahrenheitToCelsius(60)),
  metric: waterOf(6, 18, 16)
};
function waterOf(depth_m: number, out_m: number, temperature_C: number): WaterNow {
  return { depth_m, out_m, temperature_C, ground: 'gravel', wind: 'calm' };
}

/** The water that was fished or planned last, or one to begin with. */
export const waterNow = ({ water, units }: Pick<Settings, 'water' | 'units'>): WaterNow =>
  water ?? FIRST[units];

/** What a setup says of the water; what it leaves open (a plain bottom, the day's wind) is as `before`. */
export function waterIn({ water, bottom, start }: Setup, before: WaterNow): WaterNow {
  return {
    ...before,
    depth_m: water.depth_m,
    temperature_C: water.temperature_C,
    out_m: start.bait_x_m,
    ground: bottom.ground?.kind ?? before.ground
  };
}

/** As `inWater`, over a level bottom of that kind, as a plan and a card run it. */
export const inLevelWater = (setup: Setup, water: WaterNow): Setup =>
  parseSetup({ ...inWater(setup, water), bottom: levelBed(water.ground) });

/** The same gear in that water, without its wind. Throws ScenarioError where the line cannot reach. */
export function inWater(setup: Setup, water: WaterNow): Setup {
  const { depth_m, out_m, temperature_C, ground } = water;
  const gear = gearOf(setup);
  const isSame = gear.ground === ground;
  const friction = isSame ? gear.friction : groundOf({ ground: { kind: ground } }).friction;
  const wet = { ...setup, water: { ...setup.water, temperature_C } };
  return setupOf({ ...gear, depth_m, cast_m: out_m, ground, friction }, wet);
}
