import { lessonOf, questionsAbout } from '../course/items';
import { answeredOf, figureLevel, figureOfReply } from '../practice';
import {
  answerReply,
  type Assignment,
  type ChallengeProgress,
  type Client,
  type ClientProgress,
  homeworkSubmission,
  type KeptAnswer,
  type KeptSubmission,
  type KeptTry,
  type ObjectiveProgress,
  tryReply
} from '../wire';
import { figureOf, type Challenge } from '../scoring';
import type { Homework } from './assignments';
import { clientsOf } from './clients';
import type { Db } from './store';
import { readStored } from './stored';

/** Where the clients of a homework stand, with all that they sent: every client, or only these. */
export async function clientProgressOf(
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
  const all = rows.flatMap((row) => keptIn(row) ?? []);
  all.sort((a, b) => (a.sent.at < b.sent.at ? -1 : 1));
  const tries = all.filter((one): one is KeptTry => one.sent.kind === 'try');
  const answers = all.filter((one): one is KeptAnswer => one.sent.kind === 'answer');
  const through = all.flatMap(({ sent }) => (sent.kind === 'finished' ? [sent.lesson] : []));
  const words = all.flatMap(({ sent }) => (sent.kind === 'word' ? [sent] : []));
  const sets = all.flatMap(({ sent }) => (sent.kind === 'lawn' ? [sent] : []));
  const log = all.flatMap(({ sent }) => (sent.kind === 'log' ? [sent] : []));
  const lawn = task.lawn ? { ...task.lawn, sets } : null;
  const lessons = task.lessons.map((lesson) => ({ lesson, isDone: through.includes(lesson) }));
  const challenges = task.challenges.map((challenge) => {
    const own = tries.filter((one) => one.sent.challenge === challenge.id);
    return challengeProgress(challenge, own, task.tries);
  });
  const objectives = task.objectives.map((objective) => {
    const own = answers.filter((one) => one.graded.objective === objective);
    return objectiveProgress(objective, own, questionsAbout(objective, task.questions));
  });
  return {
    client,
    lessons,
    challenges,
    objectives,
    lawn,
    log,
    words,
    isDone:
      [...challenges, ...lessons, ...objectives].every(({ isDone }) => isDone) &&
      (!lawn || sets.length > 0),
    disagreements: [...tries, ...answers].filter(({ graded }) => !graded.agrees).length,
    setAside: rows.length - all.length,
    lastDone: all.at(-1)?.sent.at ?? null,
    lastSeen: rows.reduce(
      (last, one) => (one.received_at > last ? one.received_at : last),
      client.joined_at
    )
  };
}

/** What a row holds; null for what this version cannot read. */
function keptIn({ id, payload, reply, received_at }: Row): KeptSubmission | null {
  const sent = readStored(homeworkSubmission, payload);
  if (sent?.kind === 'try') {
    const graded = readStored(tryReply, reply);
    return graded && { id, received_at, sent, graded };
  }
  if (sent?.kind === 'answer') {
    const graded = readStored(answerReply, reply);
    return graded && { id, received_at, sent, graded };
  }
  return sent && { id, received_at, sent, graded: null };
}

function challengeProgress(
  challenge: Challenge,
  tries: KeptTry[],
  asked: number
): ChallengeProgress {
  const figure = figureOf(challenge);
  const reached = tries.flatMap(({ graded }) => figureOfReply(figure, graded) ?? []);
  return {
    challenge,
    tries,
    passed: tries.filter(({ graded }) => graded.passed).length,
    isDone: tries.length >= asked,
    level: figureLevel(figure, reached)
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
    asked,
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
