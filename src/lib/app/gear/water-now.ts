import { levelBed } from '$lib/compute/jobs/day-setup';
import { groundOf, parseSetup, type Setup } from '$lib/model';
import { gearOf, setupOf } from '$lib/sandbox/gear';
import type { WaterNow } from '$lib/wire';

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
