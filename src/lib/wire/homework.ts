import * as v from 'valibot';
import { rodInputSchema } from '../model';
import { storedAnswer } from './answer';
import { LAWN_DRAGS, LAWN_MOST_M, MOST, storedAssignment } from './assignment';
import { day, id, line, shortName, time, token, words } from './fields';
import { logEntry } from './log-entry';
import { guessEntries, marks } from './try';

/** A try as a phone sends it. */
const submittedTry = v.strictObject({
  kind: v.literal('try'),
  id,
  challenge: shortName,
  input: rodInputSchema,
  model: shortName,
  at: time,
  marks,
  ...guessEntries
});

/** An answer as a phone sends it. `right` is what the phone said; the server judges for itself. */
const submittedAnswer = v.strictObject({ ...storedAnswer.entries, kind: v.literal('answer'), id });

const finishedLesson = v.strictObject({
  kind: v.literal('finished'),
  id,
  lesson: shortName,
  at: time
});

/** What a client says to the guide in words. */
const clientWord = v.strictObject({
  kind: v.literal('word'),
  id,
  text: v.pipe(words(1000), v.nonEmpty('says nothing')),
  at: time
});

/** Drags of a real rod, measured with a tape: as many as LAWN_DRAGS, in the order in which they were made. */
export const lawnDrags = v.strictObject({
  moved_m: v.pipe(
    v.array(v.pipe(v.number(), v.minValue(0, 'must be 0 m or more'), v.maxValue(LAWN_MOST_M))),
    v.length(LAWN_DRAGS, `must be ${LAWN_DRAGS} drags`)
  ),
  at: time
});
export type LawnDrags = v.InferOutput<typeof lawnDrags>;
const submittedLawn = v.strictObject({ ...lawnDrags.entries, kind: v.literal('lawn'), id });

/** A day of the client's own log, added at the client's wish. Where it was fished stays on the device. */
export const loggedDay = v.strictObject({
  on: day,
  spells: v.pipe(
    v.array(
      v.pipe(
        logEntry,
        v.check(({ place }) => place === '', 'place must be left out')
      )
    ),
    v.minLength(1, 'must be 1 stop or more'),
    v.maxLength(MOST.spells, `must be ${MOST.spells} stops or fewer`)
  ),
  at: time
});
export type LoggedDay = v.InferOutput<typeof loggedDay>;
const submittedDay = v.strictObject({ ...loggedDay.entries, kind: v.literal('log'), id });

/** Something that was done for homework. */
export const homeworkSubmission = v.variant('kind', [
  submittedTry,
  submittedAnswer,
  finishedLesson,
  clientWord,
  submittedLawn,
  submittedDay
]);
export type HomeworkSubmission = v.InferOutput<typeof homeworkSubmission>;
export type SubmittedTry = v.InferOutput<typeof submittedTry>;
export type SubmittedAnswer = v.InferOutput<typeof submittedAnswer>;
export type FinishedLesson = v.InferOutput<typeof finishedLesson>;
export type SubmittedLawn = v.InferOutput<typeof submittedLawn>;
export type SubmittedDay = v.InferOutput<typeof submittedDay>;
export type ClientWord = v.InferOutput<typeof clientWord>;

/** One try on a hand's ruler: what was meant and what was done. SI, distances towards the angler. */
const tryMark = v.object({
  meant_m: v.number(),
  bait_m: v.number(),
  /** Length of the tip's way, never negative. */
  tip_m: v.number(),
  /** Highest clearance of the bait above the bottom. */
  lift_m: v.number(),
  /** Fastest tenth of a second of the bait along the bottom. */
  speed_m_s: v.number(),
  /** Whether it kept the pace or the speed limit that was asked; true where none was. */
  isPaceRight: v.boolean()
});
export type TryMark = v.InferOutput<typeof tryMark>;

/** What the server made of a try, with all that it takes to say so. */
export const tryReply = v.object({
  marks: v.number(),
  passed: v.boolean(),
  /** False when the phone showed other marks than these. */
  agrees: v.boolean(),
  travel_m: v.number(),
  /** Of the task's figure, in its own unit; null where nothing was reached, left out in replies of before. */
  figure: v.optional(v.nullable(v.number())),
  /** What was reached of each goal, in order; null for none. */
  reached: v.optional(v.array(v.nullable(v.number()))),
  /** The try on the hand's ruler; null where no distance is asked. */
  mark: v.optional(v.nullable(tryMark)),
  /** Share of its moving time that the bait touched the bottom, 0–1. */
  contact: v.number(),
  /** What tip and bait did, and why; replies of before say nothing. */
  says: v.optional(v.object({ imperial: v.string(), metric: v.string() })),
  /** Model that graded. */
  model: shortName
});
export type TryReply = v.InferOutput<typeof tryReply>;

/** What the server made of an answer. */
export const answerReply = v.object({
  objective: shortName,
  right: v.boolean(),
  /** Question, answer and right answer with quantities in braces; replies of before say nothing. */
  says: v.optional(v.object({ ask: v.string(), given: v.string(), key: v.string() })),
  /** False when the phone said otherwise. */
  agrees: v.boolean(),
  /** Model that judged. */
  model: shortName
});
export type AnswerReply = v.InferOutput<typeof answerReply>;

/** What a client's phone asks: `share` is the secret of the link, `token` the phone's own. */
export const homeworkRequest = {
  look: v.strictObject({ share: token }),
  /** `isBack` says a phone that has been told its homework before. */
  enter: v.strictObject({
    share: token,
    token,
    name: line(40),
    isBack: v.optional(v.boolean(), false)
  }),
  send: v.strictObject({ share: token, token, sent: homeworkSubmission }),
  forget: v.strictObject({ share: token, token })
};

/** What a guide asks of homework. */
export const homeworkOrder = {
  /** An assignment: read only once it is sure that another may be set. */
  set: v.strictObject({ task: v.unknown() }),
  change: v.variant('change', [
    v.strictObject({ change: v.literal('close') }),
    v.strictObject({ change: v.literal('extend'), due: v.nullable(day) }),
    /** Another assignment in its place, while nobody has begun it. */
    v.strictObject({ change: v.literal('edit'), task: v.unknown() })
  ]),
  note: v.strictObject({ client: token, note: words(1000) })
};

const client = v.object({
  id: shortName,
  nickname: v.string(),
  joined_at: time,
  /** What the guide wrote back. */
  note: v.string()
});
export type Client = v.InferOutput<typeof client>;

const closed_at = v.nullable(time);

/** What anybody gets to know who has the link. */
export const homeworkView = v.object({ task: storedAssignment, closed_at });
export type HomeworkView = v.InferOutput<typeof homeworkView>;

/** What a client's phone gets to know about its homework and itself. */
export const clientView = v.object({
  client,
  assignment: v.object({ id: shortName, task: storedAssignment, closed_at })
});
export type ClientView = v.InferOutput<typeof clientView>;
