import { parseSetup } from '../model';
import type { ChallengeProgress, OwnGear } from '../wire';
import { assignmentOf } from './assignments';
import { Refusal } from './faults';
import { handOf, type ClientHand } from './plan-hand';
import { clientProgressOf } from './progress';
import type { Guide } from './spaces';
import type { Db } from './store';

/** What homework says of someone who comes along. */
interface PlannedClient {
  nickname: string | null;
  hand: ClientHand | null;
  own: OwnGear | null;
}

/** @param wanted undefined or null for someone unknown */
export async function plannedClient(
  db: Db,
  guide: Guide,
  wanted: { homework: string; client: string } | null
): Promise<PlannedClient> {
  if (!wanted) return { nickname: null, hand: null, own: null };
  const assignment = await assignmentOf(db, guide, wanted.homework);
  const [found] = assignment ? await clientProgressOf(db, assignment, [wanted.client]) : [];
  if (!found) throw new Refusal(404, 'This client isn’t here, or asked to be deleted.');
  const { client, challenges } = found;
  return { nickname: client.nickname, hand: handOf(challenges), own: gearOf(challenges) };
}

/** Of the first challenge that was tried, or else the first that was set; null without any. */
function gearOf(challenges: readonly ChallengeProgress[]): OwnGear | null {
  const [first] = [...challenges.filter(({ tries }) => tries.length > 0), ...challenges];
  if (!first) return null;
  const { bait, water } = parseSetup(first.challenge.setup);
  return { depth_m: water.depth_m, mass_kg: bait.mass_kg };
}
