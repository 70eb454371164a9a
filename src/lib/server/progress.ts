import type { Challenge } from '../scoring';
import type { Assignment } from './assignments';
import { clientsOf, type Client } from './clients';
import type { Graded, SentTry } from './homework';
import { adviceFor, rulerOf, type Advice, type HandRuler } from './hand-ruler';
import type { Db } from './store';

export interface KeptTry {
  id: string;
  sent: SentTry;
  graded: Graded;
  received_at: string;
}

/** How far a client is with one challenge. */
export interface ChallengeProgress {
  challenge: Challenge;
  /** In the order in which they were made. */
  tries: KeptTry[];
  passed: number;
  isDone: boolean;
  ruler: (HandRuler & { advice: Advice }) | null;
}

export interface ClientProgress {
  client: Client;
  lessons: { lesson: string; isDone: boolean }[];
  challenges: ChallengeProgress[];
  isDone: boolean;
  /** Tries whose marks on the phone were others than here. */
  disagreements: number;
  lastSeen: string;
}

/** Where every client of a homework stands. */
export async function progressOf(db: Db, assignment: Assignment): Promise<ClientProgress[]> {
  const clients = await clientsOf(db, assignment.id);
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'id', 'part', 'payload', 'reply', 'received_at'])
    .where('parent', '=', assignment.id)
    .execute();
  const byClient = grouped(rows);
  return clients.map((client) => clientProgress(assignment, client, byClient.get(client.id) ?? []));
}

interface Row {
  scope: string;
  id: string;
  part: string;
  payload: string;
  reply: string;
  received_at: string;
}

function clientProgress({ task }: Assignment, client: Client, rows: Row[]): ClientProgress {
  const sent = rows.map((row) => ({ row, payload: JSON.parse(row.payload) }));
  const done = new Set(
    sent.flatMap((one) => (one.payload.kind === 'finished' ? one.row.part : []))
  );
  const tries = sent
    .filter(({ payload }) => payload.kind === 'try')
    .map(({ row, payload }): KeptTry => {
      return {
        id: row.id,
        sent: payload,
        graded: JSON.parse(row.reply),
        received_at: row.received_at
      };
    })
    .sort((a, b) => (a.sent.at < b.sent.at ? -1 : 1));
  const challenges = task.challenges.map((challenge) => {
    const own = tries.filter((one) => one.sent.challenge === challenge.id);
    return challengeProgress(challenge, own, task.tries);
  });
  const lessons = task.lessons.map((lesson) => ({ lesson, isDone: done.has(lesson) }));
  return {
    client,
    lessons,
    challenges,
    isDone: [...challenges, ...lessons].every(({ isDone }) => isDone),
    disagreements: tries.filter(({ graded }) => !graded.agrees).length,
    lastSeen: rows.reduce(
      (last, row) => (row.received_at > last ? row.received_at : last),
      client.joined_at
    )
  };
}

function challengeProgress(
  challenge: Challenge,
  tries: KeptTry[],
  asked: number
): ChallengeProgress {
  const ruler = rulerOf(
    challenge,
    tries.map(({ graded }) => graded.travel_m)
  );
  return {
    challenge,
    tries,
    passed: tries.filter(({ graded }) => graded.passed).length,
    isDone: tries.length >= asked,
    ruler: ruler && { ...ruler, advice: adviceFor(ruler) }
  };
}

function grouped(rows: Row[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) groups.set(row.scope, [...(groups.get(row.scope) ?? []), row]);
  return groups;
}
