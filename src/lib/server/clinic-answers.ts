import { findChallenge, loadLessons } from '../course';
import type { Challenge } from '../scoring';
import { partOf } from './clinic-flow';
import { pollOf } from './clinic-poll';
import type { Account } from './fair-queue';
import { Refusal } from './faults';
import { gradeAgain } from './homework';
import { alive, hasParticipant } from './rooms';
import type { ParticipantLook } from './participant-look';
import type { Db } from './store';
import { readStored } from './stored';
import { acceptAfter, forgetSent, type Receipt } from './submissions';
import {
  clinicReply,
  type ClinicReply,
  type ClinicSubmission,
  clinicSubmission,
  type Round
} from '../wire';

/** Sent from one seat at most. */
const MOST_ANSWERS = 500;

const lessons = loadLessons();

export function challengeOfRound(round: Round): Challenge {
  const found = round.kind === 'try' ? findChallenge(round.challenge, lessons) : undefined;
  if (!found) throw new Refusal(422, 'There’s nothing to try in this round.');
  return found;
}

/**
 * Takes what a seat answers to the round that is open, once. Refuses without a seat.
 * @param look what was found for this very token and answer
 * @param address where it comes from, as far as shares of the work go
 * @returns the room's id too, for telling who looks at it
 */
export async function takeAnswer(
  db: Db,
  look: ParticipantLook | null,
  answer: ClinicSubmission,
  now: string,
  address: string
): Promise<{ room: string; receipt: Receipt }> {
  const room = alive(look?.room ?? null, now);
  const { seat: scope = null, count = 0, before } = look ?? {};
  // No seat is made here: what comes late from a phone that had all deleted would bring it back.
  if (scope === null) throw new Refusal(403, NOT_ADMITTED);
  const sent = { scope, id: answer.id, parent: room.id, part: answer.part, payload: answer };
  const receipt = await acceptAfter(db, sent, before, now, () => {
    const { state } = room;
    if (count >= MOST_ANSWERS) throw new Refusal(429, 'Too many answers from this phone.');
    if (state.phase !== 'open' || answer.part !== partOf(state)) {
      throw new Refusal(410, TOO_LATE[answer.kind]);
    }
    return replyTo(state.plan[state.at], answer, { space: room.space_id, address });
  });
  if (receipt.kind !== 'accepted' || (await hasParticipant(db, scope)))
    return { room: room.id, receipt };
  // Deleted at the phone's own wish while this was graded.
  await forgetSent(db, scope);
  throw new Refusal(403, NOT_ADMITTED);
}

const TOO_LATE = {
  vote: 'The vote had closed. Yours doesn’t count.',
  try: 'The round had closed. Your try doesn’t count here.'
};
const NOT_ADMITTED = 'This phone isn’t in this room yet. Type the code first.';

async function replyTo(
  round: Round,
  answer: ClinicSubmission,
  account: Account
): Promise<ClinicReply> {
  if (answer.kind === 'try') return gradeAgain(challengeOfRound(round), answer, account);
  if (pollOf(round).options.some(({ id }) => id === answer.option)) return { taken: true };
  throw new Refusal(422, `option: "${answer.option}" is none of the question's.`);
}

export interface ParticipantAnswer {
  seat: string;
  id: string;
  answer: ClinicSubmission;
  reply: ClinicReply;
}

/** The answers to a part, in the order in which they came. */
export async function answersTo(db: Db, room: string, part: string): Promise<ParticipantAnswer[]> {
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'id', 'payload', 'reply'])
    .where('parent', '=', room)
    .where('part', '=', part)
    .orderBy('received_at')
    .execute();
  return rows.flatMap(({ scope: seat, id, payload, reply }) => {
    const answer = readStored(clinicSubmission, payload);
    const graded = readStored(clinicReply, reply);
    return answer && graded ? [{ seat, id, answer, reply: graded }] : [];
  });
}

/** How many seats have answered to a part. */
export async function answeredIn(db: Db, room: string, part: string): Promise<number> {
  const { count } = await db
    .selectFrom('submissions')
    .select((of) => of.fn.count('scope').distinct().as('count'))
    .where('parent', '=', room)
    .where('part', '=', part)
    .executeTakeFirstOrThrow();
  return Number(count);
}

/** Votes by option: of each seat the last, and the hands that were counted. */
export function countVotes(
  answers: readonly ParticipantAnswer[],
  hands: Record<string, number> = {}
): Record<string, number> {
  const last = new Map<string, string>();
  for (const { seat, answer } of answers) {
    if (answer.kind === 'vote') last.set(seat, answer.option);
  }
  const counts: Record<string, number> = { ...hands };
  for (const option of last.values()) counts[option] = (counts[option] ?? 0) + 1;
  return counts;
}
