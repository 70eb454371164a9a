import { fahrenheitToCelsius, FOOT_M, GROUND_KINDS } from '$lib/model';
import { parseData } from '$lib/scoring';
import { FISH_MOODS, outfitGear, WINDS, type OutfitGear, type OwnGear } from '$lib/wire';
import * as v from 'valibot';

/** Where nobody says another: deep water. */
const DEPTH_M = 25 * FOOT_M;
/** Deeper a jig cannot be followed by a count; shallower there is nothing to count, m. */
export const DEPTH_RANGE_M = [0.5, 15] as const;
/** As many as a guide's boat carries and one guide teaches. */
export const MOST_IN_BOAT = 4;
/** Where nobody says another: one of those offered in either units, °C. */
const TEMPERATURE_C = fahrenheitToCelsius(60);

/** So long a lesson is, at least, without the way out and back, min. */
const LEAST_MINUTES = 30;

const within = (least: number, most: number) =>
  v.pipe(v.string(), v.transform(Number), v.number(), v.minValue(least), v.maxValue(most));

/** Homework and client with a dot between, or nothing for somebody new. */
const client = v.pipe(v.string(), v.regex(/^([\w-]{1,64}\.[\w-]{1,64})?$/, 'must be a client'));

/** Gear of one's own as an address carries it. */
const gearText = v.pipe(v.string(), v.maxLength(2000), v.parseJson(), outfitGear);

const schema = v.strictObject({
  client: v.pipe(v.array(client), v.maxLength(MOST_IN_BOAT, `takes ${MOST_IN_BOAT} at most`)),
  /** When it begins, by the clock. */
  start: v.optional(v.pipe(v.string(), v.regex(/^([01]\d|2[0-3]):[0-5]\d$/)), '07:00'),
  temperature: v.optional(within(0, 40), String(TEMPERATURE_C)),
  depth: v.optional(within(...DEPTH_RANGE_M)),
  /** A weight, an outfit, or empty for the lightest that is down in time. */
  jig: v.optional(v.union([v.literal(''), within(0.003, 0.1), gearText])),
  ground: v.optional(v.picklist(GROUND_KINDS), 'gravel'),
  wind: v.optional(v.picklist(WINDS), 'calm'),
  fish: v.optional(v.picklist(FISH_MOODS), 'unknown'),
  minutes: v.optional(within(LEAST_MINUTES, 480), '120'),
  /** Of those, for launching and running out; as many are kept for the way back. */
  run: v.optional(within(0, 120)),
  day: v.optional(v.pipe(v.string(), v.isoDate()))
});

export type PlanRequest = v.InferOutput<typeof schema> & { run: number };

/** Where nobody says another, min: common practice, no source. Lakes differ. */
const USUAL_RUN_MIN = 15;
export const RUN_STEP_MIN = 5;

/** The longest way out and back that leaves a lesson, each, in fives of a minute. */
export const mostRun = (minutes: number) =>
  Math.max(0, RUN_STEP_MIN * Math.floor((minutes - LEAST_MINUTES) / 2 / RUN_STEP_MIN));

/** What the address of a plan asks for. Throws DataError with the field and value of the first fault. */
export function planRequestIn(params: URLSearchParams): PlanRequest {
  const clients = params.getAll('client');
  const client = clients.length > 0 ? clients : [''];
  const asked = parseData(schema, { ...Object.fromEntries(params), client });
  return { ...asked, run: asked.run ?? Math.min(USUAL_RUN_MIN, mostRun(asked.minutes)) };
}

/** Each who is asked for: a client, or null for somebody new. */
export function clientsIn({
  client
}: PlanRequest): ({ homework: string; client: string } | null)[] {
  return client.map((one) => {
    const [homework, id] = one.split('.');
    return id ? { homework, client: id } : null;
  });
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
  const depth_m = depth ?? own?.depth_m ?? DEPTH_M;
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

/** The address of the plan that a form asks for. Another client, alone, brings their own depth and weight. */
export function addressFor(form: FormData, changed: string): string {
  const asked = new URLSearchParams();
  for (const [name, value] of form) asked.append(name, String(value));
  const isAlone = asked.getAll('client').length < 2;
  if (changed === 'client' && isAlone) for (const name of ['depth', 'jig']) asked.delete(name);
  return `?${asked}`;
}

/** The same with one more in the boat, somebody new; or without the one at this place. */
export function addressWith(form: FormData, change: 'one more' | { without: number }): string {
  const clients = form.getAll('client').map(String);
  form.delete('client');
  const kept = change === 'one more' ? [...clients, ''] : clients.toSpliced(change.without, 1);
  for (const one of kept) form.append('client', one);
  return addressFor(form, '');
}
