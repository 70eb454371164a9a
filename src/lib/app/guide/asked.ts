import { FOOT_M, GROUND_KINDS } from '$lib/model';
import { parseData } from '$lib/scoring';
import { FISH_MOODS, outfitGear, WINDS, type OutfitGear } from '$lib/wire';
import * as v from 'valibot';

/** Offered depths, m: what practice waters have, in steps that are whole feet. */
export const DEPTHS_M = [5, 8, 11, 15, 20, 25, 30, 40].map((feet) => feet * FOOT_M);
/** Offered temperatures, °C. */
export const TEMPERATURES_C = [4, 7, 10, 13, 16, 19, 22, 25, 28];
const within = (least: number, most: number) =>
  v.pipe(v.string(), v.transform(Number), v.number(), v.minValue(least), v.maxValue(most));

/** Homework and client with a dot between, or nothing for somebody new. */
const client = v.pipe(v.string(), v.regex(/^([\w-]{1,64}\.[\w-]{1,64})?$/, 'must be a client'));

/** Gear of one's own as an address carries it. */
const gearText = v.pipe(v.string(), v.maxLength(2000), v.parseJson(), outfitGear);

const schema = v.strictObject({
  client: v.optional(client, ''),
  temperature: v.optional(within(0, 40), '16'),
  depth: v.optional(within(0.5, 15)),
  /** A weight, an outfit, or empty for the lightest that is down in time. */
  jig: v.optional(v.union([v.literal(''), within(0.003, 0.1), gearText])),
  ground: v.optional(v.picklist(GROUND_KINDS), 'gravel'),
  wind: v.optional(v.picklist(WINDS), 'calm'),
  fish: v.optional(v.picklist(FISH_MOODS), 'unknown'),
  minutes: v.optional(within(30, 480), '120'),
  day: v.optional(v.pipe(v.string(), v.isoDate()))
});

export type PlanRequest = v.InferOutput<typeof schema>;

/** What the address of a plan asks for. Throws DataError with the field and value of the first fault. */
export function planRequestIn(params: URLSearchParams): PlanRequest {
  return parseData(schema, Object.fromEntries(params));
}

/** The client that is asked for, or null for somebody new. */
export function clientIn({ client }: PlanRequest): { homework: string; client: string } | null {
  const [homework, id] = client.split('.');
  return id ? { homework, client: id } : null;
}

/** Depth and weight of one challenge of homework. */
export interface OwnGear {
  depth_m: number;
  mass_kg: number;
}

/** What is planned for; no weight is the lightest that is down in time. */
export interface PlannedGear {
  depth_m: number;
  jig_kg: number | null;
  /** The outfit that the jig is of, where it is one of the guide's own. */
  outfit: OutfitGear | null;
}

/** Depth and weight to plan for: what is not asked for is the client's own, and else the course's. */
export function gearFor(
  { depth, jig }: Pick<PlanRequest, 'depth' | 'jig'>,
  own: OwnGear | null
): PlannedGear {
  const depth_m = depth ?? own?.depth_m ?? DEPTHS_M[2];
  if (typeof jig === 'object') return { depth_m, jig_kg: jig.bait.mass_kg, outfit: jig };
  return {
    depth_m,
    jig_kg: jig === undefined ? (own?.mass_kg ?? null) : jig || null,
    outfit: null
  };
}

/** The outfit as an address carries it: what its tests left open does not change a count by much. */
export function outfitInAddress({ spread, ...gear }: OutfitGear): string {
  void spread;
  return JSON.stringify(gear);
}

/** The address of the plan that a form asks for. Another client brings their own depth and weight. */
export function addressFor(form: FormData, changed: string): string {
  const asked = new URLSearchParams();
  for (const [name, value] of form) asked.set(name, String(value));
  if (changed === 'client') for (const name of ['depth', 'jig']) asked.delete(name);
  return `?${asked}`;
}
