import { MODEL_VERSION } from '../model';
import { callOf } from '../practice';
import {
  areSameMarks,
  type AnswerReply,
  type Assignment,
  type HomeworkSubmission,
  type KeptGuess,
  MOST,
  type SubmittedAnswer,
  type SubmittedTry,
  type TryReply
} from '../wire';
import { DataError, type Challenge } from '../scoring';
import { serverCompute } from './compute';
import { clientWith, sharedAssignment } from './clients';
import type { Account } from './fair-queue';
import { Refusal } from './faults';
import type { Db } from './store';
import { accept, submissionCountOf, forgetSent, type Receipt } from './submissions';

/** Stored from one client at most: all that the largest homework asks for. */
const MOST_SENT =
  MOST.challenges * MOST.tries +
  MOST.objectives * MOST.questions +
  MOST.lessons +
  MOST.words +
  MOST.lawns +
  MOST.days;

/** Grades a try again. Throws DataError for what is no rod input. */
export async function gradeAgain(
  challenge: Challenge,
  { input, marks, model, ...said }: Pick<SubmittedTry, 'input' | 'marks' | 'model'> & KeptGuess,
  account: Account
): Promise<TryReply> {
  const call = callOf(said, challenge);
  const graded = await serverCompute('grade', { challenge, input, call }, account);
  const same = areSameMarks(graded.marks, marks);
  return { ...graded, agrees: same && model === MODEL_VERSION, model: MODEL_VERSION };
}

/** Judges an answer again. Throws DataError for what is no answer to a question about `objectives`. */
async function judgeAgain(
  objectives: readonly string[],
  sent: SubmittedAnswer,
  account: Account
): Promise<AnswerReply> {
  const { item, seed, given } = sent;
  const verdict = await serverCompute(
    'judge',
    { given: { item, seed, given }, objectives },
    account
  );
  const agrees = verdict.right === sent.right && sent.model === MODEL_VERSION;
  return { ...verdict, agrees, model: MODEL_VERSION };
}

/**
 * Takes what a client's phone sends, once. Refuses what is not of this homework.
 * @param address where it comes from, as far as shares of the work go
 */
export async function takeSent(
  db: Db,
  share: string,
  token: string,
  sent: HomeworkSubmission,
  now: string,
  address: string
): Promise<Receipt> {
  const assignment = await sharedAssignment(db, share);
  const client = await clientWith(db, assignment.id, token);
  if (!client) throw new Refusal(403, NOT_ENTERED);
  const { id: parent } = assignment;
  const submission = { scope: client.id, id: sent.id, parent, part: partOf(sent), payload: sent };
  const room = (await submissionCountOf(db, client.id)) < MOST_SENT;
  // Asked only for what is new: what was acknowledged once stays so after the homework was closed.
  const receipt = await accept(db, submission, now, () => {
    if (assignment.closed_at) throw new Refusal(410, 'Your guide has closed this homework.');
    if (!room) throw new Refusal(429, `This phone has sent the most it can, ${MOST_SENT}.`);
    return replyTo(assignment.task, sent, { space: assignment.space_id, address });
  });
  if (await clientWith(db, assignment.id, token)) return receipt;
  // Deleted at the client's own wish while this was graded.
  await forgetSent(db, client.id);
  throw new Refusal(403, NOT_ENTERED);
}

const NOT_ENTERED = 'This phone hasn’t opened this homework yet.';

/** Challenge, question or lesson that it belongs to; its kind, where it belongs to none. */
function partOf(sent: HomeworkSubmission): string {
  if (sent.kind === 'try') return sent.challenge;
  if (sent.kind === 'answer') return sent.item;
  return sent.kind === 'finished' ? sent.lesson : sent.kind;
}

async function replyTo(
  task: Assignment,
  sent: HomeworkSubmission,
  account: Account
): Promise<TryReply | AnswerReply | { done: true }> {
  if (sent.kind === 'answer') return judgeAgain(task.objectives, sent, account);
  // A word, or days of the own log: of any homework, at the client's wish.
  if (sent.kind === 'word' || sent.kind === 'log') return { done: true };
  if (sent.kind === 'lawn') {
    if (task.lawn) return { done: true };
    throw new DataError('kind', sent.kind, 'is not part of this homework');
  }
  if (sent.kind === 'finished') {
    if (task.lessons.includes(sent.lesson)) return { done: true };
    throw new DataError('lesson', sent.lesson, 'is not part of this homework');
  }
  const challenge = task.challenges.find(({ id }) => id === sent.challenge);
  if (challenge) return gradeAgain(challenge, sent, account);
  throw new DataError('challenge', sent.challenge, 'is not part of this homework');
}
