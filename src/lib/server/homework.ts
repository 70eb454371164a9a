import * as v from 'valibot';
import { MODEL_VERSION } from '../model';
import { contactWhileMoving, gradeTry, type Challenge } from '../scoring';
import { clientWith, sharedAssignment } from './clients';
import { Refusal } from './faults';
import { label, madeId, rodInput, time } from './shapes';
import type { Db } from './store';
import { accept, countOf, type Receipt } from './submissions';
import type { Task } from './task';

/** A try as a phone sends it. `marks` are what the phone showed; the server grades for itself. */
const triedSchema = v.strictObject({
  kind: v.literal('try'),
  id: madeId,
  challenge: label,
  input: rodInput,
  model: label,
  at: time,
  marks: v.pipe(v.number(), v.minValue(0), v.maxValue(100)),
  guess_m: v.optional(v.pipe(v.number(), v.minValue(-100), v.maxValue(100)))
});

const finishedSchema = v.strictObject({
  kind: v.literal('finished'),
  id: madeId,
  lesson: label,
  at: time
});

export const sentSchema = v.variant('kind', [triedSchema, finishedSchema]);
export type Sent = v.InferOutput<typeof sentSchema>;
export type SentTry = v.InferOutput<typeof triedSchema>;

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

/**
 * Browsers and Node differ in the last bits of sine and cosine, and a share that lies on the border
 * of two marks then rounds either way: one mark is no disagreement.
 */
const MARKS_BAND = 1;
/** Stored from one client at most: sixty tries of a dozen challenges, and the lessons. */
const MOST_SENT = 1000;

/** Grades a try again, by the only grader there is. Throws ScenarioError for what is no rod input. */
export function gradeAgain(
  challenge: Challenge,
  sent: Pick<SentTry, 'input' | 'marks' | 'model'>
): Graded {
  const { result, grade } = gradeTry(challenge, sent.input);
  const same = Math.abs(grade.marks - sent.marks) <= MARKS_BAND;
  return {
    marks: grade.marks,
    passed: grade.passed,
    agrees: same && sent.model === MODEL_VERSION,
    travel_m: result.travel_m,
    contact: contactWhileMoving(result),
    model: MODEL_VERSION
  };
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
  if (!client) throw new Refusal(403, 'This phone has not entered this homework yet.');
  const part = sent.kind === 'try' ? sent.challenge : sent.lesson;
  const submission = { scope: client.id, id: sent.id, parent: assignment.id, part, payload: sent };
  const room = (await countOf(db, client.id)) < MOST_SENT;
  // Asked only for what is new: what was acknowledged once stays so after the homework was closed.
  return accept(db, submission, now, () => {
    if (assignment.closed_at) throw new Refusal(410, 'Your guide has closed this homework.');
    if (!room) throw new Refusal(429, `More than ${MOST_SENT} were sent from this phone.`);
    return answerTo(assignment.task, sent);
  });
}

function answerTo(task: Task, sent: Sent): Graded | { done: true } {
  if (sent.kind === 'finished') {
    if (task.lessons.includes(sent.lesson)) return { done: true };
    throw new Refusal(422, `lesson: "${sent.lesson}" is not part of this homework.`);
  }
  const challenge = task.challenges.find(({ id }) => id === sent.challenge);
  if (challenge) return gradeAgain(challenge, sent);
  throw new Refusal(422, `challenge: "${sent.challenge}" is not part of this homework.`);
}
