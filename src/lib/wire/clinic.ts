import * as v from 'valibot';
import { rodInputSchema } from '../model';
import { id, line, shortName, time, token, whole } from './fields';
import { tryReply } from './homework';
import { marks } from './try';

/** One thing that a room does together. */
const round = v.variant('kind', [
  v.object({
    kind: v.literal('talk'),
    title: v.string(),
    says: v.array(v.string()),
    /** A drill to take along. */
    isDrill: v.exactOptional(v.literal(true)),
    minutes: v.number()
  }),
  /** The question that a lesson asks before it shows anything. */
  v.object({
    kind: v.literal('predict'),
    lesson: shortName,
    section: v.number(),
    minutes: v.number()
  }),
  /** A question like the one that was just explained. */
  v.object({
    kind: v.literal('ask'),
    lesson: shortName,
    item: shortName,
    seed: v.number(),
    minutes: v.number()
  }),
  /** `again`: the challenge of an earlier round, to see whether the room's hand has kept it. */
  v.object({
    kind: v.literal('try'),
    lesson: shortName,
    challenge: shortName,
    again: v.exactOptional(v.literal(true)),
    minutes: v.number()
  })
]);
export type Round = v.InferOutput<typeof round>;

/** Open takes answers; held takes none and shows none; revealed shows what the room said. */
export const roomPhase = v.picklist(['open', 'held', 'revealed']);
/** What helps a room on between two votes: a hint, or two minutes with a neighbour. */
export const aid = v.picklist(['hint', 'talk']);
export type Aid = v.InferOutput<typeof aid>;

/** Votes by option. */
export const counts = v.record(v.string(), v.number());

/** A clinic as it is stored; what a version before had not is as in a room where it never happened. */
export const roomState = v.object({
  /** What its guide calls it; may be empty. */
  name: v.optional(v.string(), ''),
  plan: v.array(round),
  at: v.number(),
  phase: roomPhase,
  /** 1 for the first vote on a question, 2 after hint or talk. */
  ballot: v.number(),
  /** What the room has had of help with this question, in order. */
  given: v.optional(v.array(aid), []),
  /** The help that is shown now; a hint stays through the vote after it. */
  aid: v.optional(v.nullable(aid), null),
  /** The vote after which it was given: with the next one it has been used. */
  aid_ballot: v.optional(v.nullable(v.number()), null),
  /** When this round began; null in a room of before. */
  began_at: v.optional(v.nullable(time), null),
  /** When the talk ends; the room may stop earlier. */
  talk_ends_at: v.optional(v.nullable(time), null),
  /** Hands counted by the instructor, by part and option. */
  hands: v.optional(v.record(v.string(), counts), {}),
  /** Id of the try that the screen replays. */
  shown: v.optional(v.nullable(v.string()), null),
  /** Hash of the token of the phone that is the screen's rod. */
  rod: v.optional(v.nullable(v.string()), null),
  /** Id of the homework that this room takes along; only what its guide chose for it. */
  homework: v.optional(v.nullable(v.string()), null),
  /** Places in the plan whose round was closed or revealed, not skipped; null in a room of before. */
  done: v.optional(v.nullable(v.array(v.number())), null),
  isOver: v.optional(v.boolean(), false)
});
export type RoomState = v.InferOutput<typeof roomState>;

/** What the instructor does with the room, as the screen asks for it. */
export const clinicAction = v.variant('do', [
  v.strictObject({ do: v.literal('go'), to: whole(0, 100) }),
  v.strictObject({
    do: v.picklist(['hold', 'open', 'hint', 'talk', 'reveal', 'again', 'end', 'resume'])
  }),
  v.strictObject({ do: v.literal('hands'), option: shortName, count: whole(0, 1000) }),
  v.strictObject({ do: v.literal('show'), id: v.nullable(id) }),
  v.strictObject({ do: v.literal('homework'), id: v.nullable(id) })
]);
export type ClinicAction = v.InferOutput<typeof clinicAction>;

/** The round and the vote that is answered: "3.1". */
const part = v.pipe(v.string(), v.regex(/^\d{1,3}\.\d{1,3}$/));

/** What a participant sends: a vote, or a try with the marks that the phone showed. */
export const clinicSubmission = v.variant('kind', [
  v.strictObject({ kind: v.literal('vote'), id, part, option: shortName }),
  v.strictObject({
    kind: v.literal('try'),
    id,
    part,
    input: rodInputSchema,
    model: shortName,
    marks
  })
]);
export type ClinicSubmission = v.InferOutput<typeof clinicSubmission>;

/** What the server made of it: a vote is taken, a try graded. */
export const clinicReply = v.union([tryReply, v.object({ taken: v.literal(true) })]);
export type ClinicReply = v.InferOutput<typeof clinicReply>;

/** In one batch of a phone that is the rod at most; it sends a third of a second's worth then. */
export const MOST_TURNS = 20;
const time_ms = v.pipe(v.number(), v.minValue(0), v.maxValue(1e10));
const turned_deg = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));

/** How a phone that is the rod was turned. */
export const rodBatch = v.strictObject({
  /** Made by the phone when it took the rod: one phone holds it at a time. */
  hold: id,
  /** Counts the batches: one that comes after a later one is dropped. */
  seq: whole(0, 1e9),
  /** Counts how often the phone asked for another try. */
  again: whole(0, 1e9),
  /** When by the phone's clock, ms, and how far the rod was turned from its start, degrees. */
  samples: v.pipe(v.array(v.tuple([time_ms, turned_deg])), v.maxLength(MOST_TURNS))
});
export type RodBatch = v.InferOutput<typeof rodBatch>;

const link = v.pipe(v.string(), v.maxLength(100));

/** Prepared plans are made for so many minutes. */
export const PLAN_MINUTES = [45, 90] as const;
export type PlanMinutes = (typeof PLAN_MINUTES)[number];

/** Letters of a clinic's name: one line on a phone. */
export const MOST_CLINIC_NAME = 60;

/** What phones and screens of a clinic ask. */
export const clinicRequest = {
  open: v.strictObject({
    name: v.optional(line(MOST_CLINIC_NAME, 0), ''),
    minutes: v.picklist(PLAN_MINUTES),
    /** Ids; without them, those of the prepared plan. */
    lessons: v.optional(v.pipe(v.array(shortName), v.maxLength(20)))
  }),
  admission: v.strictObject({ door: v.picklist(['open', 'closed']) }),
  join: v.strictObject({ token }),
  forget: v.strictObject({ token }),
  answer: v.strictObject({ token, answer: clinicSubmission }),
  home: v.strictObject({ link }),
  rod: v.strictObject({ link, ...rodBatch.entries })
};
