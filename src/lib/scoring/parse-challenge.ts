import * as v from 'valibot';
import { parseScenario, parseSetup, ScenarioError, tipOf, tipPathOf, type Move } from '../model';
import type { Challenge } from './challenge';

/** A challenge that cannot be set. `path` names the field ("goals.0.band_m"), `value` what stood there. */
export class ChallengeError extends Error {
  constructor(
    readonly path: string,
    readonly value: unknown,
    reason: string
  ) {
    super(`${path || 'challenge'}: ${reason}, got ${show(value)}`);
    this.name = 'ChallengeError';
  }
}

/** Where a challenge's moves must take up the rod, m: what rounding an angle can make of it. */
const START_TOLERANCE_M = 1e-3;
const TOTAL_MARKS = 100;

function number(low: number, high: number) {
  const range = `must be a number from ${low} to ${high}`;
  return v.pipe(v.number(), v.finite(range), v.minValue(low, range), v.maxValue(high, range));
}

function whole(low: number, high: number) {
  return v.pipe(number(low, high), v.integer('must be a whole number'));
}

const text = v.pipe(v.string(), v.minLength(1, 'must not be empty'));
const length = number(0, 30);
const weight = whole(1, TOTAL_MARKS);

const goal = v.variant('kind', [
  v.pipe(
    v.strictObject({
      kind: v.literal('travel'),
      target_m: number(0.01, 30),
      band_m: number(0.005, 10),
      weight
    }),
    v.check((g) => g.band_m < g.target_m, 'band_m must be smaller than target_m')
  ),
  v.strictObject({ kind: v.literal('peak_height'), most_m: length, weight }),
  v.strictObject({ kind: v.literal('contact'), least: number(0, 1), weight }),
  v.strictObject({ kind: v.literal('speed'), most_m_s: number(0.01, 20), weight }),
  v.strictObject({
    kind: v.literal('hops'),
    count: whole(1, 50),
    height_m: v.pipe(
      v.tuple([length, length]),
      v.check(([low, high]) => low < high, 'must be lowest, then highest')
    ),
    weight
  }),
  v.strictObject({
    kind: v.literal('stones'),
    touched: v.pipe(v.array(whole(0, 199)), v.minLength(1, 'must name a stone')),
    weight
  })
]);

const challengeSchema = v.strictObject({
  id: v.pipe(
    v.string(),
    v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be lower-case words and hyphens')
  ),
  title: text,
  ask: text,
  setup: v.unknown(),
  plane: v.picklist(['lift', 'sweep']),
  start: v.strictObject({ elevation_deg: number(-90, 90), azimuth_deg: number(-180, 180) }),
  hold_s: number(0, 60),
  goals: v.pipe(v.array(goal), v.minLength(1, 'must have a goal')),
  visibility: v.picklist(['seen', 'half_seen', 'unseen']),
  reference: v.unknown(),
  beginner: v.unknown()
});

/** Checks a challenge. Throws ChallengeError with the path and value of the first fault. */
export function parseChallenge(input: unknown): Challenge {
  const parsed = v.safeParse(challengeSchema, input, { abortEarly: true });
  if (!parsed.success) throw faultOf(parsed.issues[0]);
  const challenge = parsed.output as Challenge;
  within('setup', () => parseSetup(challenge.setup));
  checkMove(challenge, 'reference');
  checkMove(challenge, 'beginner');
  checkGoals(challenge);
  return challenge;
}

function faultOf(issue: v.BaseIssue<unknown>): ChallengeError {
  const path = v.getDotPath(issue) ?? '';
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    return new ChallengeError(path, issue.path?.at(-1)?.value, 'unknown key');
  }
  if (issue.input === undefined) return new ChallengeError(path, undefined, 'is missing');
  const reason =
    issue.kind === 'schema' && issue.expected ? `expected ${issue.expected}` : issue.message;
  return new ChallengeError(path, issue.input, reason);
}

/** The model checks what is the model's; its paths are put below the challenge's field. */
function within<T>(field: string, check: () => T): T {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    const path = error.path.replace(/^move(?=\.|$)/, '');
    const reason = error.message.slice(error.message.indexOf(': ') + 2).replace(/, got .*$/s, '');
    throw new ChallengeError(
      [field, path.replace(/^\./, '')].filter(Boolean).join('.'),
      error.value,
      reason
    );
  }
}

function checkMove(challenge: Challenge, field: 'reference' | 'beginner'): void {
  const { setup, start, hold_s } = challenge;
  const move: Move = challenge[field];
  const scenario = within(field, () => parseScenario({ ...setup, move, hold_s }));
  const first = { x: 0, z: 0 };
  const begin = { x: 0, z: 0 };
  within(field, () => tipPathOf(scenario, scenario.move)).at(0, first);
  tipOf(scenario, start.elevation_deg, start.azimuth_deg, begin);
  const gap_m = Math.hypot(first.x - begin.x, first.z - begin.z);
  if (gap_m > START_TOLERANCE_M) {
    const reason = `must begin where the challenge's start has the tip (it is ${gap_m.toFixed(3)} m away)`;
    throw new ChallengeError(field, move, reason);
  }
}

function checkGoals({ goals, setup }: Challenge): void {
  const total = goals.reduce((sum, { weight }) => sum + weight, 0);
  if (total !== TOTAL_MARKS) {
    throw new ChallengeError('goals', total, `weights must sum to ${TOTAL_MARKS}`);
  }
  const stones = setup.bottom?.stones?.length ?? 0;
  goals.forEach((goal, i) => {
    if (goal.kind !== 'stones') return;
    const missing = goal.touched.find((index) => index >= stones);
    if (missing === undefined) return;
    throw new ChallengeError(`goals.${i}.touched`, missing, `there are ${stones} stones`);
  });
}

function show(value: unknown): string {
  const shown = JSON.stringify(value) ?? String(value);
  return shown.length > 80 ? `${shown.slice(0, 77)}…` : shown;
}
