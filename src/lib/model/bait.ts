import { submergedFraction, type Setup } from './scenario';
import { GRAVITY_M_S2 } from './units';
import type { Water } from './water';

export interface Bait {
  readonly mass_kg: number;
  /** Mass plus the water that is set in motion with it. */
  readonly movingMass_kg: number;
  readonly weightInAir_N: number;
  readonly weightInWater_N: number;
  /** Drag over speed squared, N·s²/m². */
  readonly drag: number;
  /** Planing force over drag on a level way, 0–1. */
  readonly liftToDrag: number;
  /** Radius of the sphere with the bait's volume: how round its contact with stones is. */
  readonly radius_m: number;
}

export function baitOf(setup: Setup, water: Water): Bait {
  const { mass_kg, drag_area_m2, added_mass_fraction } = setup.bait;
  const fraction = submergedFraction(setup);
  const displaced_kg = mass_kg * (1 - fraction);
  const volume_m3 = displaced_kg / water.density_kg_m3;
  return {
    mass_kg,
    movingMass_kg: mass_kg + added_mass_fraction * displaced_kg,
    weightInAir_N: mass_kg * GRAVITY_M_S2,
    weightInWater_N: mass_kg * fraction * GRAVITY_M_S2,
    drag: 0.5 * water.density_kg_m3 * drag_area_m2,
    liftToDrag: setup.bait.lift_to_drag,
    radius_m: Math.max(((3 * volume_m3) / (4 * Math.PI)) ** (1 / 3), 1e-3)
  };
}
