import * as v from 'valibot';
import { biteSchema } from './bite';
import { GROUND_KINDS, groundOf, type Stone } from './ground';
import { LEAD_DENSITY_KG_M3, LINE_MATERIALS, type LineMaterialName } from './materials';
import { baseMove, type Move } from './move';
import { numberIn, list } from './schema-parts';
import { STANDARD_ROD } from './standard-rod';
import { waterDensity } from './water';

/**
 * The scenario: everything that decides what the bait does. SI units, named in each key.
 * x is metres away from the angler, z metres up from the water surface; the rod hand's pivot stands
 * at x = 0. Unknown keys and values out of range are refused with their path and value.
 */
const stone: v.GenericSchema<Stone> = v.strictObject({
  x_m: numberIn(-100, 100),
  width_m: numberIn(0.01, 5),
  height_m: numberIn(0.005, 3)
});

const profile = v.pipe(
  v.strictObject({ x_m: list(-200, 200), z_m: list(-80, 0) }),
  v.check((p) => p.x_m.length === p.z_m.length, 'x_m and z_m must have the same length'),
  v.check((p) => p.x_m.length !== 1, 'a profile has no points (flat) or at least two'),
  v.check((p) => isIncreasing(p.x_m), 'x_m must increase')
);

const bottom = v.pipe(
  v.strictObject({
    /** A kind of bottom with its own friction, stones and stems, laid out from the seed. */
    ground: v.optional(
      v.strictObject({
        kind: v.picklist(GROUND_KINDS),
        seed: v.optional(v.pipe(numberIn(0, 1e9), v.integer()), 0)
      })
    ),
    friction: v.optional(numberIn(0, 2)),
    profile: v.optional(profile),
    stones: v.optional(v.pipe(v.array(stone), v.maxLength(200)), []),
    /** Whether a hook can hang in the stones. */
    snags: v.optional(v.boolean(), false)
  }),
  v.transform((b) => ({ ...b, friction: b.friction ?? groundOf(b).friction }))
);

const lineEntries = {
  material: v.optional(
    v.picklist(Object.keys(LINE_MATERIALS) as LineMaterialName[]),
    'fluorocarbon'
  ),
  diameter_m: numberIn(2e-5, 5e-3),
  density_kg_m3: v.optional(numberIn(200, 9000)),
  youngs_modulus_Pa: v.optional(numberIn(1e7, 3e11)),
  normal_drag: v.optional(v.union([v.literal('reynolds'), numberIn(0, 20)])),
  tangential_drag: v.optional(numberIn(0, 1))
};

/** Pull at which it parts, N; without it it never breaks. */
const breakingLoad = v.optional(numberIn(1, 1000));

const start = v.pipe(
  v.strictObject({
    bait_x_m: v.pipe(
      numberIn(-100, 100),
      v.check((x) => Math.abs(x) >= 0.05, 'must be at least 0.05 from the pivot')
    ),
    /** "splash": the bait has just met the water, at the surface. */
    line: v.optional(v.picklist(['equilibrium', 'straight', 'splash']), 'equilibrium'),
    /** "free": the spool gives line until the bait first touches the bottom. */
    spool: v.optional(v.picklist(['closed', 'free']), 'closed'),
    /** Unstretched length less the chord from tip to bait. */
    slack_m: v.optional(numberIn(0, 10)),
    horizontal_tension_N: v.optional(numberIn(1e-4, 500)),
    pretension_N: v.optional(numberIn(0, 500))
  }),
  v.check(
    (s) => s.line === 'straight' || s.pretension_N === undefined,
    'pretension_N belongs to line "straight"'
  ),
  v.check(
    (s) => s.line !== 'straight' || s.slack_m === undefined,
    'slack_m does not belong to line "straight"'
  ),
  v.check(
    (s) => s.line === 'equilibrium' || s.horizontal_tension_N === undefined,
    'horizontal_tension_N belongs to line "equilibrium"'
  ),
  v.check(
    (s) => s.slack_m === undefined || s.horizontal_tension_N === undefined,
    'give slack_m or horizontal_tension_N, not both'
  )
);

const setupEntries = {
  water: v.strictObject({
    depth_m: numberIn(0.1, 80),
    temperature_C: v.optional(numberIn(0, 40), 15)
  }),
  bottom: v.optional(bottom, {}),
  /** Wind on the dry line: positive from the angler towards the bait. */
  wind_m_s: v.optional(numberIn(-30, 30), 0),
  /** The boat and the rod hand with it: positive towards the bait. */
  drift_m_s: v.optional(numberIn(-3, 3), 0),
  /** Fish that take notice of the bait. */
  bites: v.optional(v.pipe(v.array(biteSchema), v.maxLength(50)), []),
  line: v.strictObject({
    ...lineEntries,
    /** Tied to the bait's end of the line. */
    leader: v.optional(
      v.strictObject({
        ...lineEntries,
        length_m: numberIn(0.1, 20),
        breaking_load_N: breakingLoad,
        /** The knot that ties it on holds this share of the weaker of the two; without it, it never gives first. */
        knot_strength: v.optional(numberIn(0.05, 1))
      })
    ),
    breaking_load_N: breakingLoad
  }),
  bait: v.strictObject({
    mass_kg: numberIn(1e-4, 1),
    /** Used only where submerged_weight_fraction is not given. */
    density_kg_m3: v.optional(numberIn(1001, 25000)),
    submerged_weight_fraction: v.optional(numberIn(0.01, 1)),
    drag_area_m2: v.optional(numberIn(0, 0.1), 6e-4),
    added_mass_fraction: v.optional(numberIn(0, 5), 0.5),
    /** Planing: the force of the water across the bait's way, upward, as a share of its drag. */
    lift_to_drag: v.optional(numberIn(0, 1), 0)
  }),
  rod: v.optional(
    v.strictObject({
      length_m: v.optional(numberIn(0.1, 6), STANDARD_ROD.length_m),
      pivot_height_m: v.optional(numberIn(0, 10), STANDARD_ROD.pivot_height_m),
      /** Force over displacement of the tip; null is rigid. */
      tip_stiffness_N_per_m: v.optional(v.nullable(numberIn(0.5, 1e5)), null),
      tip_damping_N_s_per_m: v.optional(numberIn(0, 100))
    }),
    {}
  ),
  start,
  numerics: v.optional(
    v.strictObject({
      segments: v.optional(v.pipe(numberIn(2, 640), v.integer()), 40),
      /** Fixes the time step; without it the step follows the motion. */
      step_s: v.optional(numberIn(1e-6, 0.01))
    }),
    {}
  )
};

const setupSchema = v.strictObject(setupEntries);
const scenarioSchema = v.strictObject({
  ...setupEntries,
  move: baseMove,
  hold_s: v.optional(numberIn(0, 600), 6),
  /** "bottom": the run ends with the tick in which the bait first touches the bottom, if it does by then. */
  until: v.optional(v.literal('bottom'))
});

/** A scenario without its move: gear, water and start, as a challenge or the practice water has it. */
export type Setup = v.InferOutput<typeof setupSchema>;
export type SetupInput = v.InferInput<typeof setupSchema>;
export type Scenario = v.InferOutput<typeof scenarioSchema>;
export type ScenarioInput = v.InferInput<typeof scenarioSchema>;
export type { Move };

/** A scenario that cannot be run. `path` names the field ("line.diameter_m"), `value` what stood there. */
export class ScenarioError extends Error {
  constructor(
    readonly path: string,
    readonly value: unknown,
    readonly reason: string
  ) {
    super(`${path || 'scenario'}: ${reason}, got ${show(value)}`);
    this.name = 'ScenarioError';
  }
}

/** Checks a scenario and fills in the defaults. Throws ScenarioError. */
export function parseScenario(input: unknown): Scenario {
  return parse(scenarioSchema, input);
}

/** Checks a scenario without a move. Throws ScenarioError. */
export function parseSetup(input: unknown): Setup {
  return parse(setupSchema, input);
}

type LineInput = Omit<Setup['line'], 'leader' | 'breaking_load_N'>;
export type LineProperties = Required<Omit<LineInput, 'material'>>;

/** The line's own values: what is given wins over what the material's name stands for. */
export function lineProperties(line: LineInput): LineProperties {
  const named = LINE_MATERIALS[line.material];
  return {
    diameter_m: line.diameter_m,
    density_kg_m3: line.density_kg_m3 ?? named.density_kg_m3,
    youngs_modulus_Pa: line.youngs_modulus_Pa ?? named.youngs_modulus_Pa,
    normal_drag: line.normal_drag ?? named.normal_drag,
    tangential_drag: line.tangential_drag ?? named.tangential_drag
  };
}

/** Share of its weight that the bait keeps under water. */
export function submergedFraction(setup: Pick<Setup, 'bait' | 'water'>): number {
  const { submerged_weight_fraction, density_kg_m3 = LEAD_DENSITY_KG_M3 } = setup.bait;
  return submerged_weight_fraction ?? 1 - waterDensity(setup.water.temperature_C) / density_kg_m3;
}

function parse<S extends v.GenericSchema>(schema: S, input: unknown): v.InferOutput<S> {
  const parsed = v.safeParse(schema, input, { abortEarly: true });
  if (parsed.success) return parsed.output;
  const issue = parsed.issues[0];
  const path = v.getDotPath(issue) ?? '';
  const unknownKey = issue.type === 'strict_object' && issue.expected === 'never';
  if (unknownKey) throw new ScenarioError(path, issue.path?.at(-1)?.value, 'unknown key');
  throw new ScenarioError(path, issue.input, reasonOf(issue));
}

function reasonOf(issue: v.BaseIssue<unknown>): string {
  if (issue.input === undefined) return 'is missing';
  return issue.kind === 'schema' && issue.expected ? `expected ${issue.expected}` : issue.message;
}

function show(value: unknown): string {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}

function isIncreasing(values: readonly number[]): boolean {
  return values.every((value, i) => i === 0 || value > values[i - 1]);
}
