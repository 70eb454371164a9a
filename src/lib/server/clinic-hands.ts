import { challengeOfRound } from './clinic-answers';
import { partOf } from './clinic-flow';
import { errorsOf } from './hand-ruler';
import type { Room } from './rooms';
import type { Db } from './store';
import { readStored } from './stored';
import { type RoomHand, type Round, tryReply } from '../wire';

/** How the room's hand did in every round of tries so far that was revealed or left, in order. */
export async function handsOf(db: Db, { id, state }: Room): Promise<RoomHand[]> {
  const rows = await db
    .selectFrom('submissions')
    .select(['part', 'reply'])
    .where('parent', '=', id)
    .where('payload', 'like', '{"kind":"try"%')
    .execute();
  const now = state.phase === 'revealed' || state.isOver ? '' : partOf(state);
  const parts = [...new Set(rows.map(({ part }) => part))].filter((part) => part !== now);
  return parts.sort(byRound).flatMap((part) => {
    const travels = rows
      .filter((row) => row.part === part)
      .flatMap(({ reply }) => readStored(tryReply, reply)?.travel_m ?? []);
    return handOf(state.plan, part, travels);
  });
}

const numbersOf = (part: string) => part.split('.').map(Number);

/** "3.1" before "10.1". */
function byRound(a: string, b: string): number {
  const [atA, ballotA] = numbersOf(a);
  const [atB, ballotB] = numbersOf(b);
  return atA - atB || ballotA - ballotB;
}

function handOf(plan: readonly Round[], part: string, travels_m: number[]): RoomHand[] {
  const [at, ballot] = numbersOf(part);
  const round = plan[at];
  const { title, goals } = challengeOfRound(round);
  const goal = goals.find((one) => one.kind === 'travel');
  if (goal?.kind !== 'travel' || travels_m.length === 0) return [];
  const { target_m, band_m } = goal;
  const again = round.kind === 'try' && (round.again ?? false);
  return [{ title, ballot, again, target_m, band_m, ...errorsOf(travels_m, target_m) }];
}
