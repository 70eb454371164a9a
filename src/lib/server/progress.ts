import { lessonOf } from '../course/items';
import { answeredOf, type Assignment } from '../practice';
import type { Challenge } from '../scoring';
import type { Homework } from './assignments';
import { clientsOf, type Client } from './clients';
import { adviceFor, rulerOf, type Advice, type HandRuler } from './hand-ruler';
import type { Graded, Judged, Sent, SentAnswer, SentTry } from './homework';
import type { Db } from './store';

/** Something that a phone sent, and what the server made of it. */
interface Kept<S extends Sent, Reply> {
  id: string;
  sent: S;
  graded: Reply;
  received_at: string;
}
export type KeptTry = Kept<SentTry, Graded>;
export type KeptAnswer = Kept<SentAnswer, Judged>;

/** How far a client is with one challenge. */
export interface ChallengeProgress {
  challenge: Challenge;
  /** In the order in which they were made. */
  tries: KeptTry[];
  passed: number;
  isDone: boolean;
  ruler: (HandRuler & { advice: Advice }) | null;
}

/** How far a client is with the questions about one objective. */
export interface ObjectiveProgress {
  objective: string;
  /** In the order in which they were given. */
  answers: KeptAnswer[];
  right: number;
  /** Of the right ones those that were guessed. */
  guessed: number;
  isDone: boolean;
  /** The lesson to go back to, by id; null where enough was known. */
  backTo: string | null;
}

export interface ClientProgress {
  client: Client;
  lessons: { lesson: string; isDone: boolean }[];
  challenges: ChallengeProgress[];
  objectives: ObjectiveProgress[];
  isDone: boolean;
  /** Tries and answers that the phone marked otherwise. */
  disagreements: number;
  lastSeen: string;
}

/** Where the clients of a homework stand, with all that they sent: every client, or only these. */
export async function progressOf(
  db: Db,
  homework: Homework,
  only?: readonly string[]
): Promise<ClientProgress[]> {
  const all = await clientsOf(db, homework.id);
  const clients = only ? all.filter(({ id }) => only.includes(id)) : all;
  if (clients.length === 0) return [];
  const sent = db
    .selectFrom('submissions')
    .select(['scope', 'id', 'payload', 'reply', 'received_at'])
    .where('parent', '=', homework.id);
  const rows = await (only ? sent.where('scope', 'in', only) : sent).execute();
  const byClient = grouped(rows);
  return clients.map((client) =>
    clientProgress(homework.task, client, byClient.get(client.id) ?? [])
  );
}

interface Row {
  scope: string;
  id: string;
  payload: string;
  reply: string;
  received_at: string;
}

function clientProgress(task: Assignment, client: Client, rows: Row[]): ClientProgress {
  const all = rows
    .map(({ id, payload, reply, received_at }) => {
      return { id, received_at, sent: JSON.parse(payload) as Sent, graded: JSON.parse(reply) };
    })
    .sort((a, b) => (a.sent.at < b.sent.at ? -1 : 1));
  const tries = all.filter((one): one is KeptTry => one.sent.kind === 'try');
  const answers = all.filter((one): one is KeptAnswer => one.sent.kind === 'answer');
  const through = all.flatMap(({ sent }) => (sent.kind === 'finished' ? [sent.lesson] : []));
  const lessons = task.lessons.map((lesson) => ({ lesson, isDone: through.includes(lesson) }));
  const challenges = task.challenges.map((challenge) => {
    const own = tries.filter((one) => one.sent.challenge === challenge.id);
    return challengeProgress(challenge, own, task.tries);
  });
  const objectives = task.objectives.map((objective) => {
    const own = answers.filter((one) => one.graded.objective === objective);
    return objectiveProgress(objective, own, task.questions);
  });
  return {
    client,
    lessons,
    challenges,
    objectives,
    isDone: [...challenges, ...lessons, ...objectives].every(({ isDone }) => isDone),
    disagreements: [...tries, ...answers].filter(({ graded }) => !graded.agrees).length,
    lastSeen: all.reduce(
      (last, one) => (one.received_at > last ? one.received_at : last),
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

function objectiveProgress(
  objective: string,
  answers: KeptAnswer[],
  asked: number
): ObjectiveProgress {
  const { right, guessed, isWeak } = answeredOf(
    answers.map(({ graded, sent }) => ({ right: graded.right, report: sent.report }))
  );
  return {
    objective,
    answers,
    right,
    guessed,
    isDone: answers.length >= asked,
    backTo: isWeak ? lessonOf(objective) : null
  };
}

function grouped(rows: readonly Row[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(row.scope);
    if (group) group.push(row);
    else groups.set(row.scope, [row]);
  }
  return groups;
}
