import { findLesson, loadLessons } from '../course';
import { MODEL_VERSION } from '../model';
import { sectionStation } from '../practice';
import {
  type ClinicSubmission,
  clinicSubmission,
  type HomeAnswer,
  type HomeView,
  type Prediction,
  type RoomState,
  type Round,
  type StoredTry,
  TOKEN_PATTERN
} from '../wire';
import { pollOf } from './clinic-poll';
import { Refusal } from './faults';
import { CODE_LENGTH } from './room-code';
import { hasParticipant, roomByCode, participantId } from './rooms';
import type { Db } from './store';
import { readStored } from './stored';

const NOTHING = 'There’s nothing at this link, or it has expired.';
const lessons = loadLessons();

/**
 * All that this seat sent, and of no other. It can be fetched as long as the room is kept, since who
 * was there has it in hand. Of a question the vote before any help counts: that was the prediction.
 * @param link the room's code and the seat's token
 */
export async function homeOf(db: Db, link: string): Promise<HomeView> {
  const token = link.slice(CODE_LENGTH + 1);
  const room = await roomByCode(db, link.slice(0, CODE_LENGTH));
  if (!room || !TOKEN_PATTERN.test(token)) throw new Refusal(404, NOTHING);
  const seat = participantId(room.id, token);
  if (!(await hasParticipant(db, seat))) throw new Refusal(404, NOTHING);
  const rows = await db
    .selectFrom('submissions')
    .select(['id', 'part', 'payload', 'received_at'])
    .where('scope', '=', seat)
    .orderBy('received_at')
    .execute();
  const sent = rows.flatMap(({ id, part, payload, received_at: at }) => {
    const [number, ballot] = part.split('.').map(Number);
    const answer = readStored(clinicSubmission, payload);
    return answer ? [{ id, at, answer, ballot, number, round: room.state.plan[number] }] : [];
  });
  return {
    held: room.created_at.slice(0, 10),
    tries: sent.flatMap(tryIn),
    predictions: predictionsIn(sent),
    answers: answersIn(sent),
    asked: askedIn(sent, room.state)
  };
}

interface Sent {
  id: string;
  at: string;
  answer: ClinicSubmission;
  ballot: number;
  number: number;
  round: Round;
}

function tryIn({ id, at, answer, round }: Sent): StoredTry[] {
  if (answer.kind !== 'try' || round.kind !== 'try') return [];
  const { input, model, marks } = answer;
  return [{ id, challenge: round.challenge, input, model, marks, at }];
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

function answersIn(sent: readonly Sent[]): HomeAnswer[] {
  const last = new Map<number, HomeAnswer>();
  for (const { answer, ballot, number, round, at } of sent) {
    if (answer.kind !== 'vote' || ballot !== 1 || round.kind !== 'ask') continue;
    const { key, item } = pollOf(round);
    if (!item) continue;
    const { option: given } = answer;
    const told = { given, right: given === key, model: MODEL_VERSION, at };
    last.set(number, { round: number, item: item.source, seed: item.seed, ...told });
  }
  return [...last.values()];
}

function askedIn(sent: readonly Sent[], { at, phase, isOver }: RoomState): HomeView['asked'] {
  const asked = new Map<number, HomeView['asked'][number]>();
  for (const { answer, ballot, number, round } of sent) {
    const isTold = isOver || number < at || (number === at && phase === 'revealed');
    if (answer.kind !== 'vote' || !isTold) continue;
    const { about, ask, options, key } = pollOf(round);
    const says = (id: string) => options.find((one) => one.id === id)?.says ?? '';
    const before = asked.get(number)?.votes.filter((vote) => vote.ballot !== ballot) ?? [];
    const votes = [
      ...before,
      { ballot, says: says(answer.option), right: answer.option === key }
    ].sort((a, b) => a.ballot - b.ballot);
    asked.set(number, { ask: `${about} ${ask}`.trim(), key: says(key), votes });
  }
  return [...asked].sort(([a], [b]) => a - b).map(([, one]) => one);
}

/** Where a lesson asks the question of this round; null for rounds that ask none of a lesson's. */
export function stationAsked(round: Round): Pick<Prediction, 'lesson' | 'station'> | null {
  if (round.kind !== 'predict') return null;
  const found = findLesson(round.lesson, lessons);
  if (!found) return null;
  return { lesson: round.lesson, station: sectionStation(found.sections, round.section) };
}
