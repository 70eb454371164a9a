import * as v from 'valibot';
import { rodInputSchema, type Move } from '../model';
import { checkMove, FIGURE_UNITS, parseData, type Challenge } from '../scoring';
import { storedAnswer } from './answer';
import { aid, counts, roomPhase } from './clinic';
import { challenge } from './challenge';
import { day, shortName, readBy } from './fields';
import { prediction } from './record';
import { storedTry } from './try';

type ShownRun = Pick<Challenge, 'setup' | 'plane' | 'start' | 'hold_s'> & { move: Move };

/** A run of the model to be played. */
const run = readBy((input) => {
  const anything = v.looseObject({ plane: v.picklist(['lift', 'sweep']) });
  const shown = parseData(anything, input) as unknown as ShownRun;
  checkMove(shown, 'move');
  return shown;
});

const asks = v.nullable(v.pick(prediction, ['lesson', 'station']));
/** The item of the bank that a question is; null for a lesson's own question. */
const item = v.nullable(v.object({ source: shortName, seed: v.number() }));

/** What a room votes on, without what is right. */
const poll = {
  about: v.string(),
  ask: v.string(),
  options: v.array(v.object({ id: shortName, says: v.string() })),
  /** The lesson's own question that this is; null for others. */
  asks,
  /** What the screen plays before the vote. */
  watch: v.nullable(run),
  item
};
const predictPoll = v.object({ kind: v.literal('predict'), ...poll });
const askPoll = v.object({ kind: v.literal('ask'), ...poll });
export type ShownPoll = v.InferOutput<typeof predictPoll> | v.InferOutput<typeof askPoll>;

/** What a round asks. */
const shown = v.variant('kind', [
  v.object({ kind: v.literal('talk'), title: v.string(), says: v.array(v.string()) }),
  predictPoll,
  askPoll,
  v.object({ kind: v.literal('try'), challenge, again: v.boolean() })
]);
export type ShownRound = v.InferOutput<typeof shown>;

/** What the model's run came to, of the quantity that was asked for, SI; a share from 0 to 1. */
const outcome = v.object({
  of: v.picklist(['travel_m', 'peak_height_m', 'contact', 'fall_s', 'airborne_s', 'pull_N']),
  value: v.number(),
  /** That the jig then hung, and came no farther. */
  hung: v.optional(v.literal(true))
});
export type ModelOutcome = v.InferOutput<typeof outcome>;

/** What is told of a question once it is revealed. */
const revealed = v.object({
  key: shortName,
  replies: v.record(v.string(), v.string()),
  explain: v.nullable(v.string()),
  measured: v.nullable(outcome),
  /** What the model was asked, to be run on the screen. */
  run: v.nullable(run)
});
export type Revealed = v.InferOutput<typeof revealed>;

/** What every phone sees. No counts: a phone shows what its owner did, the screen what the room did. */
export const phoneView = v.object({
  /** What the clinic is called; may be empty. */
  name: v.string(),
  part: v.string(),
  at: v.number(),
  of: v.number(),
  phase: roomPhase,
  ballot: v.number(),
  isOver: v.boolean(),
  shown,
  /** The help that the room has now, and the hint's words where it is one. */
  aid: v.nullable(aid),
  hint: v.nullable(v.string()),
  revealed: v.nullable(revealed)
});
export type PhoneView = v.InferOutput<typeof phoneView>;

/** What a phone hears that came in; the id of its place is for the feed. */
export const joined = v.object({ ...phoneView.entries, seat: shortName });

/** What a try reached of its task's figure (null: nothing), and whether it passed. */
const roomTry = v.object({ id: shortName, figure: v.nullable(v.number()), passed: v.boolean() });
export type RoomTry = v.InferOutput<typeof roomTry>;

/** What an axis of a task's figure says. */
const scale = v.object({
  unit: v.picklist(FIGURE_UNITS),
  name: v.string(),
  less: v.string(),
  more: v.string(),
  asked: v.nullable(v.pipe(v.tuple([v.number(), v.nullable(v.number())]), v.readonly()))
});

/** The room's hand at a challenge, in the unit of its figure. */
const roomHand = v.object({
  title: v.string(),
  ballot: v.number(),
  /** Whether the challenge was there before, in an earlier round. */
  again: v.boolean(),
  scale,
  /** Average of all tries, and how far from it about two of three stayed. */
  mean: v.number(),
  spread: v.number(),
  tries: v.number(),
  /** Each of them, where they are too few for an average; else none. */
  few: v.optional(v.array(v.number()), []),
  /** How many of them were as asked. */
  right: v.number()
});
export type RoomHand = v.InferOutput<typeof roomHand>;

/** The vote before any help, shown beside a later one: they are not always of the same people. */
const firstVote = v.object({
  counts,
  /** Hands were counted then, and none in the vote that is shown now. */
  hasHandsAlone: v.boolean()
});
export type FirstVote = v.InferOutput<typeof firstVote>;

/** What to do after a vote, by the share that was right (teaching.md, after Smith 2009). */
const advice = v.picklist(['teach', 'discuss', 'explain', 'explain slowly']);
export type VoteAdvice = v.InferOutput<typeof advice>;

/** Seats without an answer that came within a minute from one group of addresses. */
export const silentCrowd = v.object({
  group: v.pipe(v.string(), v.regex(/^[0-9a-f]{0,3}$/)),
  /** 2031-05-01T08:00Z */
  minute: v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\dZ$/)),
  count: v.number()
});
export type SilentCrowd = v.InferOutput<typeof silentCrowd>;

/** What the big screen sees: the room as a whole, and nobody in it. */
export const screenView = v.object({
  ...phoneView.entries,
  seats: v.number(),
  /** Seats whose phones have left the room or sleep. */
  away: v.number(),
  answered: v.number(),
  isDoorClosed: v.boolean(),
  /** Participants that have answered nothing at all; counted while the door is closed. */
  silent: v.number(),
  /** Those of them that came together. */
  silentCrowds: v.array(silentCrowd),
  minutes: v.number(),
  advice: v.nullable(advice),
  hasHint: v.boolean(),
  /** Whether help was given since the last vote. */
  isHelped: v.boolean(),
  /** All rounds, for who leads the room. */
  agenda: v.array(v.object({ title: v.string(), minutes: v.number() })),
  /** How long this round has been on, s. */
  round_s: v.nullable(v.number()),
  /** What only who leads the room reads: what is right, and why. */
  notes: v.array(v.string()),
  /** Drills to take home, for the end. */
  drills: v.array(v.object({ title: v.string(), says: v.array(v.string()) })),
  /** What is left of the talk, s. */
  talk_left_s: v.nullable(v.number()),
  /** Votes by option; null until they are revealed. */
  counts: v.nullable(counts),
  /** The same as soon as the vote is closed: for who leads, and not for the big screen. */
  split: v.nullable(counts),
  hands: counts,
  first: v.nullable(firstVote),
  tries: v.nullable(v.array(roomTry)),
  /** Earlier rounds of tries, to see whether the room got closer. */
  rounds: v.array(roomHand),
  replay: v.nullable(v.object({ challenge, input: rodInputSchema })),
  /** The water in which a phone is the rod now. */
  rod: v.nullable(challenge),
  /** Id of the homework that its guide chose for this room. */
  homework: v.nullable(v.string())
});
export type ScreenView = v.InferOutput<typeof screenView>;

/** What a phone that is the rod must know of the water on the screen. */
export const rodPlace = v.object({
  title: v.string(),
  plane: v.picklist(['lift', 'sweep']),
  /** Where the rod starts, in the angle that the plane moves, degrees. */
  start_deg: v.number()
});
export type RodPlace = v.InferOutput<typeof rodPlace>;

/** An answer to a question of the bank, by the number of its round. How it was come by is not sent. */
export const homeAnswer = v.object({
  ...v.omit(storedAnswer, ['id', 'report']).entries,
  round: v.number()
});
export type HomeAnswer = v.InferOutput<typeof homeAnswer>;

/** What one phone did in a clinic, as it goes into its owner's record. */
export const homeView = v.object({
  /** Day of the clinic. */
  held: day,
  tries: v.array(storedTry),
  predictions: v.array(prediction),
  answers: v.array(homeAnswer),
  /** To be read, in order; of questions that are open, nothing. Each with the model's word. */
  asked: v.array(
    v.object({
      ask: v.string(),
      key: v.string(),
      votes: v.array(v.object({ ballot: v.number(), says: v.string(), right: v.boolean() }))
    })
  )
});
export type HomeView = v.InferOutput<typeof homeView>;
