import {
  OUNCE_KG,
  parseSetup,
  type Move,
  type RodAngles,
  type RodInput,
  type Setup
} from '$lib/model';
import { FIRST_GEAR, setupOf, stretched, type Plane, type Side } from '$lib/sandbox';
import { outfitGearOf } from '$lib/fit';
import { setupWith } from '$lib/app/gear';
import type { Outfit } from '$lib/wire';
import { LINES, lineName, WEIGHTS_KG } from '$lib/sandbox/gear';
import { formatWeight, type Challenge, type Units } from '$lib/scoring';
import { HOLD_S, type KeptWater } from './water';

/** A move that can be made twice, with the water it is made in. */
export interface Chosen {
  readonly id: string;
  readonly name: string;
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly move: Move;
  readonly hold_s: number;
}

/** The rod low and round to the side, at a hand’s usual pace. */
const PLAIN_SWEEP: Chosen = {
  id: 'plain-sweep',
  name: 'A plain sweep',
  setup: setupOf(FIRST_GEAR),
  plane: 'sweep',
  start: { elevation_deg: 10, azimuth_deg: 20 },
  move: { kind: 'sweep', from_deg: 20, to_deg: 70, duration_s: 1.2, elevation_deg: 10 },
  hold_s: 4
};

/** Where a hand's rod was before it moved: water kept for long began elsewhere. */
function firstAngles({ elevation_deg, azimuth_deg }: RodInput): RodAngles {
  const [elevation, azimuth] = [elevation_deg, azimuth_deg].map((angles) => [angles].flat()[0]);
  return { elevation_deg: elevation, azimuth_deg: azimuth };
}

/** The moves to choose from: a sweep, the last try in practice water if there is one, the retrieves. */
export function movesToCompare(water: KeptWater | null, shown: readonly Challenge[]): Chosen[] {
  const last = water?.tries.at(-1);
  const own: Chosen[] = last
    ? [
        {
          id: 'last-try',
          name: 'Your last try in practice water',
          setup: last.setup,
          plane: last.plane,
          start: firstAngles(last.input),
          move: last.input,
          hold_s: HOLD_S
        }
      ]
    : [];
  return [
    PLAIN_SWEEP,
    ...own,
    ...shown.map(({ id, title, setup, plane, start, reference, hold_s }) => ({
      id,
      name: title,
      setup: parseSetup(setup),
      plane,
      start,
      move: reference,
      hold_s
    }))
  ];
}

/** One value of what differs: a weight, a line or a pace. */
export interface Variant {
  readonly id: string;
  name(units: Units): string;
  when(units: Units): string;
  apply(chosen: Chosen): Pick<Chosen, 'setup' | 'move'>;
}

export type Differing = 'weight' | 'pace' | 'line' | 'gear';

const VARIANTS: Record<Exclude<Differing, 'gear'>, readonly Variant[]> = {
  weight: WEIGHTS_KG.map((mass_kg) => ({
    id: `${mass_kg / OUNCE_KG}`,
    name: (units) => formatWeight(mass_kg, units),
    when: (units) => `with ${formatWeight(mass_kg, units)}`,
    apply: ({ setup, move }) => ({
      setup: parseSetup({ ...setup, bait: { ...setup.bait, mass_kg } }),
      move
    })
  })),
  pace: [
    paced('4', 'A quarter as fast'),
    paced('2', 'Half as fast'),
    paced('1', 'As it is'),
    paced('0.5', 'Twice as fast'),
    paced('0.25', 'Four times as fast')
  ],
  line: LINES.map((choice) => ({
    id: `${choice.material}-${choice.strength_lb}`,
    name: (units) => lineName(choice, units),
    when: (units) => `on ${lineName(choice, units)}`,
    apply: ({ setup, move }) => {
      const { material, diameter_m } = choice;
      return { setup: parseSetup({ ...setup, line: { material, diameter_m } }), move };
    }
  }))
};

/** `id` is what its time is multiplied by. */
function paced(id: string, name: string): Variant {
  return {
    id,
    name: () => name,
    when: () => name.charAt(0).toLowerCase() + name.slice(1),
    apply: ({ setup, move }) => ({ setup, move: stretched(move, Number(id)) })
  };
}

/** What may be chosen of it; of gear the move's own and the learner's outfits. */
export function variantsOf(differing: Differing, outfits: readonly Outfit[]): readonly Variant[] {
  return differing === 'gear' ? [AS_IT_COMES, ...outfits.map(outfitVariant)] : VARIANTS[differing];
}

const AS_IT_COMES: Variant = {
  id: 'own',
  name: () => 'As it comes',
  when: () => 'as it comes',
  apply: ({ setup, move }) => ({ setup, move })
};

function outfitVariant(outfit: Outfit): Variant {
  return {
    id: outfit.id,
    name: () => outfit.name,
    when: () => `with ${outfit.name}`,
    apply: ({ setup, move }) => ({ setup: setupWith(setup, outfitGearOf(outfit)), move })
  };
}

/** What one sees first: the classic cases. */
export const FIRST_PAIRS: Record<Exclude<Differing, 'gear'>, readonly [string, string]> = {
  weight: ['0.375', '0.75'],
  pace: ['2', '0.5'],
  line: ['fluorocarbon-12', 'braid-30']
};

export function comparedSideOf(chosen: Chosen, variant: Variant, units: Units): Side {
  const { hold_s } = chosen;
  return { name: variant.name(units), when: variant.when(units), hold_s, ...variant.apply(chosen) };
}
