import { findLesson, loadLessons } from '../course';
import { sectionStation, type Prediction, type StoredTry } from '../practice';
import type { Answer } from './clinic-answers';
import type { Round } from './clinic-plan';
import { Refusal } from './faults';
import { CODE_LENGTH } from './room-code';
import { roomByCode, seatId } from './rooms';
import type { Db } from './store';
import { TOKEN_PATTERN } from './token';

/** What one phone did in a clinic, as it goes into its owner's record. */
export interface Home {
  /** Day of the clinic. */
  held: string;
  tries: StoredTry[];
  predictions: Prediction[];
}

const NOTHING = 'There is nothing under this link, or it is kept no more.';
const lessons = loadLessons();

/**
 * All that this seat sent, and of no other. It can be fetched as long as the room is kept, since who
 * was there has it in hand. Of a question the vote before any help counts: that was the prediction.
 * @param link the room's code and the seat's token
 */
export async function homeOf(db: Db, link: string): Promise<Home> {
  const token = link.slice(CODE_LENGTH + 1);
  const room = await roomByCode(db, link.slice(0, CODE_LENGTH));
  if (!room || !TOKEN_PATTERN.test(token)) throw new Refusal(404, NOTHING);
  const seat = await db
    .selectFrom('seats')
    .select('id')
    .where('id', '=', seatId(room.id, token))
    .executeTakeFirst();
  if (!seat) throw new Refusal(404, NOTHING);
  const rows = await db
    .selectFrom('submissions')
    .select(['id', 'part', 'payload', 'received_at'])
    .where('scope', '=', seat.id)
    .orderBy('received_at')
    .execute();
  const sent = rows.map(({ id, part, payload, received_at: at }) => {
    const [round, ballot] = part.split('.').map(Number);
    const answer = JSON.parse(payload) as Answer;
    return { id, at, answer, ballot, round: room.state.plan[round] };
  });
  return {
    held: room.created_at.slice(0, 10),
    tries: sent.flatMap(tryIn),
    predictions: predictionsIn(sent)
  };
}

interface Sent {
  id: string;
  at: string;
  answer: Answer;
  ballot: number;
  round: Round;
}

function tryIn({ id, at, answer, round }: Sent): StoredTry[] {
  if (answer.kind !== 'try' || round.kind !== 'try') return [];
  const { input, model } = answer;
  return [{ id, challenge: round.challenge, input, model, at }];
}

function predictionsIn(sent: readonly Sent[]): Prediction[] {
  const last = new Map<Round, Prediction>();
  for (const { answer, ballot, round, at } of sent) {
    const asked = stationAsked(round);
    if (answer.kind === 'vote' && ballot === 1 && asked) {
      last.set(round, { ...asked, option: answer.option, at });
    }
  }
  return [...last.values()];
}

/** Where a lesson asks the question of this round; null for rounds that ask none of a lesson's. */
export function stationAsked(round: Round): Pick<Prediction, 'lesson' | 'station'> | null {
  if (round.kind !== 'predict') return null;
  const found = findLesson(round.lesson, lessons);
  if (!found) return null;
  return { lesson: round.lesson, station: sectionStation(found.sections, round.section) };
}
