import * as v from 'valibot';
import { DataError, parseData } from '../scoring';
import { report, storedAnswer } from './answer';
import { assignment, MOST, storedAssignment, type Assignment } from './assignment';
import { line, shortName, time, whole } from './fields';
import { encodeRod, rodInLetters } from './rod-code';
import { lawnDrags, loggedDay } from './homework';
import { guessEntries, marks } from './try';

/** Homework that travels without a server. The format is described in docs/packet-format.md. */
const FORMAT = 'feltfoot-homework';
const VERSION = 2;

const MOST_TRIES = MOST.challenges * MOST.tries;
const MOST_ANSWERS = MOST.objectives * MOST.questions;

const packetTry = v.strictObject({
  /** Which of the assignment's challenges, from 0. */
  challenge: whole(0, Number.MAX_SAFE_INTEGER),
  at: time,
  input: rodInLetters,
  /** What the client was shown, and by which version of the model; older packets say neither. */
  marks: v.optional(marks),
  model: v.optional(shortName),
  ...guessEntries
});
export type PacketTry = v.InferOutput<typeof packetTry>;

/** Without whether it was right: who opens a result judges again. */
const { item, seed, given, at } = storedAnswer.entries;
const packetAnswer = v.strictObject({ item, seed, given, report, at });
export type PacketAnswer = v.InferOutput<typeof packetAnswer>;

const resultOf = <A extends v.GenericSchema<unknown, Assignment>>(assignment: A) =>
  v.strictObject({
    assignment,
    /** Who did it, as the guide knows them; may be empty. */
    by: line(MOST.line, 0),
    /** Version of the bait model under which it was done last. */
    model: shortName,
    tries: v.pipe(v.array(packetTry), v.maxLength(MOST_TRIES, 'too many tries')),
    answers: v.pipe(v.array(packetAnswer), v.maxLength(MOST_ANSWERS, 'too many answers')),
    /** Sets of drags on the lawn; left out where there are none. */
    lawn: v.optional(v.pipe(v.array(lawnDrags), v.maxLength(MOST.lawns, 'too many sets'))),
    /** Days of the client's own log; left out where none was added. */
    log: v.optional(v.pipe(v.array(loggedDay), v.maxLength(MOST.days, 'too many days')))
  });
const result = resultOf(assignment);
/** What a client hands back: the homework it answers, what the hand did and what it was given for it. */
export type HomeworkResult = v.InferOutput<typeof result>;

/** Of version 1, which had no questions. */
const oldResult = v.pipe(
  v.looseObject({}),
  v.transform((old): unknown => ({ answers: [], ...old })),
  resultOf(storedAssignment)
);

export type Packet =
  { kind: 'assignment'; assignment: Assignment } | { kind: 'result'; result: HomeworkResult };

/** By version, what a packet of each kind holds. */
const READERS = {
  1: { assignment: storedAssignment, result: oldResult },
  [VERSION]: { assignment, result }
} as const;

/** The packet as JSON. Throws DataError for homework that could not be read again. */
export function packetOf(packet: Packet): Record<string, unknown> {
  const head = { format: FORMAT, version: VERSION, kind: packet.kind };
  if (packet.kind === 'assignment') {
    return { ...head, ...parseData(v.object({ assignment }), packet) };
  }
  const tries = packet.result.tries.map((made) => ({ ...made, input: encodeRod(made.input) }));
  return { ...head, result: { ...packet.result, tries } };
}

/** Reads a packet of this or the first version. Throws DataError naming field and value of the first fault. */
export function readPacket(input: unknown): Packet {
  const { format, version, kind, ...rest } = parseData(v.looseObject({}), input);
  if (format !== FORMAT) throw new DataError('format', format, `must be ${FORMAT}`);
  if (version !== 1 && version !== VERSION) {
    throw new DataError('version', version, `this Feltfoot reads versions 1 and ${VERSION}`);
  }
  const { assignment, result } = READERS[version];
  if (kind === 'assignment') return { kind, ...parseData(v.object({ assignment }), rest) };
  if (kind !== 'result') throw new DataError('kind', kind, 'must be assignment or result');
  const read = parseData(v.object({ result }), rest);
  refuseStray(read.result);
  return { kind, ...read };
}

function refuseStray({ assignment: { challenges }, tries }: HomeworkResult): void {
  const stray = tries.findIndex(({ challenge }) => challenge >= challenges.length);
  if (stray < 0) return;
  const reason = `the homework has ${challenges.length} challenges`;
  throw new DataError(`result.tries.${stray}.challenge`, tries[stray].challenge, reason);
}
