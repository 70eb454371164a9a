import { GRAVITY_M_S2, POUND_FORCE_N, type SetupInput } from '../model';
import type { OwnSpread, OwnValues } from '../scoring';
import type { Outfit, OutfitGear } from '../wire';
import { dragAreaOf, type DragArea } from './timed-drop';

/** Water in which an outfit is looked at by itself; a drop says its own temperature. */
const ANY_WATER = { water: { depth_m: 3 }, start: { bait_x_m: 12 } };

/** What an outfit is to the model: its label and its measured parts, and what its tests found. */
export function outfitGearOf(outfit: Outfit): OutfitGear {
  const { id, name, rod, line } = outfit;
  const { middle = {}, ends = [] } = spreadOf(outfit) ?? {};
  const { drag_area_m2 = outfit.jig.drag_area_m2, lift_to_drag, reach_m } = middle;
  return {
    outfit: id,
    name,
    bait: {
      mass_kg: outfit.jig.mass_kg,
      ...(drag_area_m2 !== undefined && { drag_area_m2 }),
      ...(lift_to_drag !== undefined && { lift_to_drag })
    },
    line: {
      material: line.material,
      diameter_m: line.diameter_m,
      ...(line.strength_lb && { breaking_load_N: line.strength_lb * POUND_FORCE_N }),
      ...(line.leader && { leader: line.leader })
    },
    rod: {
      length_m: reach_m ?? rod.length_m - rod.held_m,
      ...(rod.flex && { tip_stiffness_N_per_m: stiffnessOf(rod.flex) })
    },
    ...(ends.length > 0 && { spread: { middle, ends } })
  };
}

/** Force over displacement of the tip. */
export function stiffnessOf({ hung_kg, down_m }: NonNullable<Outfit['rod']['flex']>): number {
  return (hung_kg * GRAVITY_M_S2) / down_m;
}

/** What the outfit's own drop tells of its drag area; null without one. */
export function droppedAreaOf({ jig, line }: Pick<Outfit, 'jig' | 'line'>): DragArea | null {
  if (!jig.drop) return null;
  const { material, diameter_m } = line;
  const setup: SetupInput = {
    ...ANY_WATER,
    bait: {
      mass_kg: jig.mass_kg,
      ...(jig.drag_area_m2 !== undefined && { drag_area_m2: jig.drag_area_m2 })
    },
    line: { material, diameter_m }
  };
  return dragAreaOf(setup, [jig.drop]);
}

/** As its tests left it; with a drop alone, as that left the drag area; as published, nothing. */
function spreadOf(outfit: Outfit): OwnSpread | null {
  const { own, asPublished } = outfit;
  if (asPublished) return null;
  if (own) return own.spread;
  const dropped = droppedAreaOf(outfit);
  return dropped && dropOnly(dropped);
}

/** Planing and slack, of which a drop says nothing: as for anyone (scoring/unknowns.ts). */
const PLANING: Ends = [0, 0.4];
const SLACK_M: Ends = [0, 0.3];
type Ends = readonly [number, number];

function dropOnly({ estimate, interval90 }: DragArea): OwnSpread {
  const middle = { drag_area_m2: estimate, lift_to_drag: 0, slack_m: SLACK_M[1] / 2 };
  const pair = (name: keyof OwnValues, ends: Ends) =>
    ends.map((end): OwnValues => ({ ...middle, [name]: end }));
  const ends = [
    ...pair('drag_area_m2', interval90),
    ...pair('lift_to_drag', PLANING),
    ...pair('slack_m', SLACK_M)
  ];
  return { middle, ends };
}
