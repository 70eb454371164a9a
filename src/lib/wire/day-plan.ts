import * as v from 'valibot';
import { handEntries, reading } from './boat-card';
import { conditions, LIGHTS } from './conditions';
import { between, day, id, line, shortName, time, whole } from './fields';

/** Most outfits of one day's box: what lies on a deck. */
const MOST_BOX = 12;
const MOST_CLIENTS = 6;

/** What a day is planned for. */
export const planAsked = v.strictObject({
  ...conditions.entries,
  light: v.picklist(LIGHTS),
  /** How far out the jig lies after the cast. */
  out_m: between(2, 60),
  minutes: whole(30, 720),
  /** Anglers besides the one who plans; none: alone. */
  clients: whole(0, MOST_CLIENTS)
});

/** What the model says of one outfit of the box in this water. */
const plannedWeight = v.strictObject({
  /** Of the record's outfits; left out for the course's own gear. */
  outfit: v.optional(shortName),
  name: line(60),
  mass_kg: between(1e-4, 1),
  /** Seconds from the splash to the bottom, give or take. */
  fall: v.tuple([between(0, 600), between(0, 600)]),
  /** Fewest whole seconds for a drag of the tip that stays down, by how far out the jig is; null: none. */
  limit: v.strictObject({
    tip_m: between(0.01, 6),
    out_m: v.pipe(v.array(between(1, 100)), v.minLength(1), v.maxLength(5)),
    count_s: v.pipe(v.array(v.nullable(between(0, 600))), v.minLength(1), v.maxLength(5))
  })
});

/** What the model says of a retrieve's move with the weight to begin with. */
const plannedMove = v.strictObject({
  retrieve: line(40),
  came: reading,
  high: reading
});

/** A day's plan whole: what is printed, kept, and what its link carries. SI. docs/plan-format.md. */
export const dayPlan = v.strictObject({
  id,
  /** When it was made. */
  at: time,
  on: day,
  name: line(60),
  model: shortName,
  units: v.picklist(['imperial', 'metric']),
  asked: planAsked,
  weights: v.pipe(v.array(plannedWeight), v.minLength(1), v.maxLength(MOST_BOX)),
  moves: v.pipe(v.array(plannedMove), v.maxLength(12)),
  hand: v.nullable(
    v.strictObject({
      ...handEntries,
      /** How far single tries stray, as a part of what was meant. */
      strays: between(0, 20),
      /** Share of the tries that left the bottom. */
      lifted: between(0, 1)
    })
  )
});

export type DayPlan = v.InferOutput<typeof dayPlan>;
export type PlanAsked = DayPlan['asked'];
export type PlannedWeight = DayPlan['weights'][number];
export type PlannedMove = DayPlan['moves'][number];
