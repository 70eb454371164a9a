import * as v from 'valibot';
import type { LineMaterialName, SetupInput } from '../model';
import { ownSpread, type UnknownName } from '../scoring';
import { between, line, shortName, time } from './fields';

const materials = ['fluorocarbon', 'nylon', 'braid'] as const satisfies LineMaterialName[];
const lineSize = { material: v.picklist(materials), diameter_m: between(2e-5, 5e-3) };

/** A jig timed as it fell straight down on a free line, or in a tub of water. */
export const timedDrop = v.strictObject({
  /** From rest, just under the surface, to the bottom. */
  distance_m: between(0.1, 80),
  times_s: v.pipe(v.array(between(0.05, 120)), v.minLength(1), v.maxLength(50)),
  temperature_C: v.optional(between(0, 40), 15),
  /** Whether its line ran out behind it off a free spool, as from a boat. */
  has_line: v.optional(v.boolean())
});

const interval = v.pipe(
  v.tuple([v.pipe(v.number(), v.finite()), v.pipe(v.number(), v.finite())]),
  v.check(([least, most]) => least <= most, 'must go from the least to the most')
);
const estimate = v.strictObject({
  estimate: v.pipe(v.number(), v.finite()),
  interval90: interval,
  told: v.boolean()
});
/** An outfit's own numbers: what its tests told. */
const ownNumbers = v.strictObject({
  unknowns: v.partial(
    v.strictObject({
      reach_m: estimate,
      elevation_deg: estimate,
      slack_m: estimate,
      drag_area_m2: estimate,
      lift_to_drag: estimate
    } satisfies Record<UnknownName, v.GenericSchema>)
  ),
  spread: ownSpread,
  /** The session they are from. */
  session: shortName,
  /** Version of the bait model they hold for. */
  model: shortName,
  at: time
});

/** One rod, line and jig as they are fished together. SI; docs/record-format.md. */
export const outfit = v.strictObject({
  id: shortName,
  name: line(60),
  /** When it was last changed: of two the later stands. */
  at: time,
  jig: v.strictObject({
    mass_kg: between(1e-4, 1),
    head: v.optional(line(40, 0), ''),
    trailer: v.optional(line(40, 0), ''),
    drop: v.optional(timedDrop),
    /** Measured elsewhere and typed in; a drop's counts before it. */
    drag_area_m2: v.optional(between(1e-6, 0.1))
  }),
  rod: v.pipe(
    v.strictObject({
      /** As on the label, butt to tip. */
      length_m: between(0.3, 6),
      /** From the butt to where the hand holds it. */
      held_m: between(0, 2),
      /** The tip goes down by so much under a weight hung from it, the rod level. */
      flex: v.optional(v.strictObject({ hung_kg: between(0.005, 5), down_m: between(0.005, 3) }))
    }),
    v.check((rod) => rod.length_m - rod.held_m >= 0.1, 'must reach 0.1 m past the hand')
  ),
  line: v.strictObject({
    ...lineSize,
    /** Of the label. */
    strength_lb: v.optional(between(1, 300)),
    leader: v.optional(v.strictObject({ ...lineSize, length_m: between(0.1, 20) }))
  }),
  own: v.optional(ownNumbers),
  /** Whether its own numbers are laid aside for those as published. */
  asPublished: v.optional(v.boolean(), false)
});

export type Outfit = v.InferOutput<typeof outfit>;
export type OwnNumbers = v.InferOutput<typeof ownNumbers>;
export type TimedDrop = v.InferOutput<typeof timedDrop>;

/** Gear as a try was made with it: what of an outfit the model is told. */
export const outfitGear = v.strictObject({
  /** Of the outfit. */
  outfit: shortName,
  name: line(60),
  bait: v.strictObject({
    mass_kg: between(1e-4, 1),
    drag_area_m2: v.optional(between(1e-6, 0.1)),
    lift_to_drag: v.optional(between(0, 1))
  }),
  line: v.strictObject({
    ...lineSize,
    breaking_load_N: v.optional(between(1, 1000)),
    leader: v.optional(v.strictObject({ ...lineSize, length_m: between(0.1, 20) }))
  }),
  rod: v.strictObject({
    length_m: between(0.1, 6),
    tip_stiffness_N_per_m: v.optional(between(0.5, 1e5))
  }),
  spread: v.optional(ownSpread)
});
export type OutfitGear = v.InferOutput<typeof outfitGear>;

/** The same water, bottom and start with this gear. */
export function withOutfitGear<S extends Pick<SetupInput, 'bait' | 'line' | 'rod'>>(
  setup: S,
  { bait, line: own, rod }: OutfitGear
): S {
  return { ...setup, bait: { ...setup.bait, ...bait }, line: own, rod: { ...setup.rod, ...rod } };
}
