import * as v from 'valibot';
import { MODEL_VERSION } from '../model';
import { MOST, type Assignment } from '../practice';
import { answerSchema } from '../practice/answer';
import { guessEntries } from '../practice/fields';
import { DataError, type Challenge } from '../scoring';
import { beside } from './beside';
import { clientWith, sharedAssignment } from './clients';
import { Refusal } from './faults';
import { label, madeId, rodInput, time } from './shapes';
import type { Db } from './store';
import { accept, countOf, forgetSent, type Receipt } from './submissions';

/** A try as a phone sends it. `marks` are what the phone showed; the server grades for itself. */
const triedSchema = v.strictObject({
  kind: v.literal('try'),
  id: madeId,
  challenge: label,
  input: rodInput,
  model: label,
  at: time,
  marks: v.pipe(v.number(), v.minValue(0), v.maxValue(100)),
  ...guessEntries
});

/** An answer as a phone sends it. `right` is what the phone said; the server judges for itself. */
const answeredSchema = v.strictObject({
  ...answerSchema.entries,
  kind: v.literal('answer'),
  id: madeId
});

const finishedSchema = v.strictObject({
  kind: v.literal('finished'),
  id: madeId,
  lesson: label,
  at: time
});

export const sentSchema = v.variant('kind', [triedSchema, answeredSchema, finishedSchema]);
export type Sent = v.InferOutput<typeof sentSchema>;
export type SentTry = v.InferOutput<typeof triedSchema>;
export type SentAnswer = v.InferOutput<typeof answeredSchema>;

/** What the server made of a try. */
export interface Graded {
  marks: number;
  passed: boolean;
  /** False when the phone showed other marks than these. */
  agrees: boolean;
  travel_m: number;
  /** Share of its moving time that the bait touched the bottom, 0–1. */
  contact: number;
  /** Model that graded. */
  model: string;
}

/** What the server made of an answer. */
export interface Judged {
  objective: string;
  right: boolean;
  /** False when the phone said otherwise. */
  agrees: boolean;
  /** Model that judged. */
  model: string;
}

/**
 * Browsers and Node differ in the last bits of sine and cosine, and a share that lies on the border
 * of two marks then rounds either way: one mark is no disagreement.
 */
const MARKS_BAND = 1;
/** Stored from one client at most: all that the largest homework asks for. */
const MOST_SENT = MOST.challenges * MOST.tries + MOST.objectives * MOST.questions + MOST.lessons;

/** Grades a try again. Throws DataError for what is no rod input. */
export async function gradeAgain(
  challenge: Challenge,
  { input, marks, model }: Pick<SentTry, 'input' | 'marks' | 'model'>
): Promise<Graded> {
  const graded = await beside('grade', { challenge, input });
  const same = Math.abs(graded.marks - marks) <= MARKS_BAND;
  return { ...graded, agrees: same && model === MODEL_VERSION, model: MODEL_VERSION };
}

/** Judges an answer again. Throws DataError for what is no answer to a question about `objectives`. */
async function judgeAgain(objectives: readonly string[], sent: SentAnswer): Promise<Judged> {
  const { item, seed, given } = sent;
  const verdict = await beside('judge', { given: { item, seed, given }, objectives });
  const agrees = verdict.right === sent.right && sent.model === MODEL_VERSION;
  return { ...verdict, agrees, model: MODEL_VERSION };
}

/** Takes what a client's phone sends, once. Refuses what is not of this homework. */
export async function takeSent(
  db: Db,
  share: string,
  token: string,
  sent: Sent,
  now: string
): Promise<Receipt> {
  const assignment = await sharedAssignment(db, share);
  const client = await clientWith(db, assignment.id, token);
  if (!client) throw new Refusal(403, NOT_ENTERED);
  const { id: parent } = assignment;
  const submission = { scope: client.id, id: sent.id, parent, part: partOf(sent), payload: sent };
  const room = (await countOf(db, client.id)) < MOST_SENT;
  // Asked only for what is new: what was acknowledged once stays so after the homework was closed.
  const receipt = await accept(db, submission, now, () => {
    if (assignment.closed_at) throw new Refusal(410, 'Your guide has closed this homework.');
    if (!room) throw new Refusal(429, `More than ${MOST_SENT} were sent from this phone.`);
    return replyTo(assignment.task, sent);
  });
  if (await clientWith(db, assignment.id, token)) return receipt;
  // Deleted at the client's own wish while this was graded.
  await forgetSent(db, client.id);
  throw new Refusal(403, NOT_ENTERED);
}

const NOT_ENTERED = 'This phone has not entered this homework yet.';

/** Challenge, question or lesson that it belongs to. */
function partOf(sent: Sent): string {
  if (sent.kind === 'try') return sent.challenge;
  return sent.kind === 'answer' ? sent.item : sent.lesson;
}

async function replyTo(task: Assignment, sent: Sent): Promise<Graded | Judged | { done: true }> {
  if (sent.kind === 'answer') return judgeAgain(task.objectives, sent);
  if (sent.kind === 'finished') {
    if (task.lessons.includes(sent.lesson)) return { done: true };
    throw new DataError('lesson', sent.lesson, 'is not part of this homework');
  }
  const challenge = task.challenges.find(({ id }) => id === sent.challenge);
  if (challenge) return gradeAgain(challenge, sent);
  throw new DataError('challenge', sent.challenge, 'is not part of this homework');
}
