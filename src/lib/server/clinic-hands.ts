import { errorScores, figureOfReply, RULER_LEAST } from '../practice';
import { figureOf, figureScale, figureSide } from '../scoring';
import { challengeOfRound } from './clinic-answers';
import { partOf } from './clinic-flow';
import type { Room } from './rooms';
import type { Db } from './store';
import { readStored } from './stored';
import { type RoomHand, type Round, type TryReply, tryReply } from '../wire';

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
    const replies = rows
      .filter((row) => row.part === part)
      .flatMap(({ reply }) => readStored(tryReply, reply) ?? []);
    return handOf(state.plan, part, replies);
  });
}

const numbersOf = (part: string) => part.split('.').map(Number);

/** "3.1" before "10.1". */
function byRound(a: string, b: string): number {
  const [atA, ballotA] = numbersOf(a);
  const [atB, ballotB] = numbersOf(b);
  return atA - atB || ballotA - ballotB;
}

function handOf(plan: readonly Round[], part: string, replies: TryReply[]): RoomHand[] {
  const [at, ballot] = numbersOf(part);
  const round = plan[at];
  const challenge = challengeOfRound(round);
  const figure = figureOf(challenge);
  const values = replies.flatMap((reply) => figureOfReply(figure, reply) ?? []);
  if (values.length === 0) return [];
  const { constant: mean, variable: spread } = errorScores(values);
  const again = round.kind === 'try' && (round.again ?? false);
  const right = values.filter((value) => figureSide(figure, value) === 0).length;
  const scale = figureScale(challenge);
  const tries = values.length;
  const few = tries < RULER_LEAST ? [...values].sort((a, b) => a - b) : [];
  return [{ title: challenge.title, ballot, again, scale, mean, spread, right, tries, few }];
}
