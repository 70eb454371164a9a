import * as v from 'valibot';
import { BITE_S, GROUND_KINDS, parseSetup, type Bite } from '../model';
import type { Challenge } from './challenge';
import { checkMove } from './check-run';
import { DataError, inField, parseData } from './data-error';
import { goalSchemas } from './goals';
import { range } from './goals/goal-kind';
import { TOTAL_MARKS } from './pass-mark';
import { name, numberIn, text } from './schema-parts';
import { UNKNOWN_NAMES, type UnknownName } from './unknowns';

const ownValues = v.partial(
  v.strictObject({
    reach_m: numberIn(0.1, 6),
    elevation_deg: numberIn(-90, 90),
    slack_m: numberIn(0, 10),
    drag_area_m2: numberIn(1e-6, 0.1),
    lift_to_drag: numberIn(0, 1)
  } satisfies Record<UnknownName, v.GenericSchema>)
);

/** In pairs, one each way along each of the unknowns' directions at most. */
export const ownSpread = v.strictObject({
  middle: ownValues,
  ends: v.pipe(
    v.array(ownValues),
    v.maxLength(2 * UNKNOWN_NAMES.length),
    v.check((ends) => ends.length % 2 === 0, 'must come in pairs'),
    v.readonly()
  )
});

const challengeSchema = v.strictObject({
  id: name,
  title: text,
  ask: text,
  setup: v.unknown(),
  plane: v.picklist(['lift', 'sweep']),
  start: v.strictObject({ elevation_deg: numberIn(-90, 90), azimuth_deg: numberIn(-180, 180) }),
  hold_s: numberIn(0, 60),
  goals: v.pipe(v.array(v.variant('kind', goalSchemas)), v.minLength(1, 'must have a goal')),
  visibility: v.picklist(['seen', 'half_seen', 'unseen']),
  phase: v.optional(v.picklist(['seen', 'half_seen', 'unseen', 'kept'])),
  longest_pause_s: v.optional(numberIn(0, 120)),
  bite_between_s: v.optional(range(120)),
  if_blank: v.optional(v.unknown()),
  if_bitten: v.optional(v.unknown()),
  fish: v.optional(v.picklist(Object.keys(BITE_S) as Bite['kind'][])),
  look_alikes: v.optional(
    v.pipe(
      v.array(
        v.strictObject({
          ground: v.picklist(GROUND_KINDS),
          travel_m: numberIn(0.01, 30),
          reference: v.unknown()
        })
      ),
      v.minLength(2, 'must be two or more')
    )
  ),
  spread: v.optional(ownSpread),
  reference: v.unknown(),
  beginner: v.unknown()
});

/** Checks a challenge. Throws DataError with the path and value of the first fault. */
export function parseChallenge(input: unknown): Challenge {
  const challenge = parseData(challengeSchema, input) as Challenge;
  inField('setup', () => parseSetup(challenge.setup));
  checkMove({ ...challenge, move: challenge.reference }, 'reference');
  checkMove({ ...challenge, move: challenge.beginner }, 'beginner');
  if (challenge.if_blank) checkMove({ ...challenge, move: challenge.if_blank }, 'if_blank');
  challenge.look_alikes?.forEach(({ reference }, i) =>
    checkMove({ ...challenge, move: reference }, `look_alikes.${i}.reference`)
  );
  checkGoals(challenge);
  checkPhase(challenge);
  return challenge;
}

/** What a phase shows, a challenge of it must show. */
function checkPhase({ phase, visibility }: Challenge): void {
  const shown = phase === 'kept' ? 'unseen' : (phase ?? visibility);
  if (shown === visibility) return;
  throw new DataError('visibility', visibility, `must be ${shown} in the phase ${phase}`);
}

function checkGoals({ goals, setup }: Challenge): void {
  const total = goals.reduce((sum, { weight }) => sum + weight, 0);
  if (total !== TOTAL_MARKS) {
    throw new DataError('goals', total, `weights must sum to ${TOTAL_MARKS}`);
  }
  const stones = setup.bottom?.stones?.length ?? 0;
  goals.forEach((goal, i) => {
    if (goal.kind !== 'stones') return;
    const missing = goal.touched.find((index) => index >= stones);
    if (missing === undefined) return;
    throw new DataError(`goals.${i}.touched`, missing, `there are ${stones} stones`);
  });
}
