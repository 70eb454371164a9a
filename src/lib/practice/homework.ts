import * as v from 'valibot';
import { DataError, parseData } from '../scoring';
import { answerSchema } from './answer';
import { MOST, parseAssignment, type Assignment } from './assignment';
import { guessEntries, line, nameSchema, timeSchema, within } from './fields';
import type { KeptGuess } from './guess';
import { decodeRod, encodeRod, MOST_SAMPLES, type CodedRod } from './rod-code';
import type { StoredTry } from './record';

/** Homework that travels without a server. The format is described in docs/packet-format.md. */
const PACKET_FORMAT = 'feltfoot-homework';
const PACKET_VERSION = 2;

export interface HomeworkTry extends KeptGuess {
  /** Which of the assignment's challenges, from 0. */
  challenge: number;
  at: string;
  input: StoredTry['input'];
}

/** What a client hands back: the homework it answers, and what the hand did. No marks. */
export interface HomeworkResult {
  assignment: Assignment;
  /** Who did it, as the guide knows them; may be empty. */
  by: string;
  /** Version of the bait model under which it was done. */
  model: string;
  tries: HomeworkTry[];
  answers: HomeworkAnswer[];
}

export type Packet =
  { kind: 'assignment'; assignment: Assignment } | { kind: 'result'; result: HomeworkResult };

const MOST_TRIES = MOST.challenges * MOST.tries;
const MOST_ANSWERS = MOST.objectives * MOST.questions;
const LETTERS_A_SAMPLE = 7;

const coded = v.pipe(v.string(), v.maxLength(MOST_SAMPLES * LETTERS_A_SAMPLE, 'is too long'));
const angle = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));

/** Without whether it was right: who opens a result judges again. */
const answer = v.omit(answerSchema, ['id', 'right', 'model']);
export type HomeworkAnswer = v.InferOutput<typeof answer>;

const resultSchema = v.strictObject({
  assignment: v.unknown(),
  by: line(MOST.line, 0),
  model: nameSchema,
  tries: v.pipe(
    v.array(
      v.strictObject({
        challenge: v.pipe(v.number(), v.integer(), v.minValue(0)),
        at: timeSchema,
        input: v.strictObject({
          elevation: v.union([angle, coded]),
          azimuth: v.union([angle, coded]),
          line_in: v.optional(coded)
        }),
        ...guessEntries
      })
    ),
    v.maxLength(MOST_TRIES, 'too many tries')
  ),
  answers: v.pipe(v.array(answer), v.maxLength(MOST_ANSWERS, 'too many answers'))
});

/** The packet as JSON. Throws DataError for what could not be read again. */
export function packetOf(packet: Packet): Record<string, unknown> {
  const head = { format: PACKET_FORMAT, version: PACKET_VERSION };
  if (packet.kind === 'assignment') {
    return {
      ...head,
      kind: 'assignment',
      assignment: parseAssignment(packet.assignment, 'assignment')
    };
  }
  const tries = packet.result.tries.map((made) => ({ ...made, input: encodeRod(made.input) }));
  return { ...head, kind: 'result', result: { ...packet.result, tries } };
}

/** What version 1 had not: questions. */
const added = { assignment: { objectives: [], questions: 1 }, result: { answers: [] } };

/** Reads a packet of this or the first version. Throws DataError naming field and value of the first fault. */
export function parsePacket(input: unknown): Packet {
  const { format, version, kind, ...rest } = parseData(v.looseObject({}), input);
  if (format !== PACKET_FORMAT) throw new DataError('format', format, `must be ${PACKET_FORMAT}`);
  if (version !== 1 && version !== PACKET_VERSION) {
    throw new DataError('version', version, `this Feltfoot reads versions 1 and ${PACKET_VERSION}`);
  }
  const isOld = version === 1;
  if (kind === 'assignment') {
    return { kind, assignment: readAssignment(rest.assignment, kind, isOld) };
  }
  if (kind === 'result') return { kind, result: parseResult(rest.result, isOld) };
  throw new DataError('kind', kind, 'must be assignment or result');
}

function readAssignment(input: unknown, field: string, isOld: boolean): Assignment {
  return parseAssignment(isOld ? including(added.assignment, input) : input, field);
}

function parseResult(input: unknown, isOld: boolean): HomeworkResult {
  const whole = isOld ? including(added.result, input) : input;
  const result = within('result', () => parseData(resultSchema, whole));
  const assignment = readAssignment(result.assignment, 'result.assignment', isOld);
  const tries = result.tries.map((made, i): HomeworkTry => {
    const field = `result.tries.${i}`;
    if (made.challenge >= assignment.challenges.length) {
      const reason = `the homework has ${assignment.challenges.length} challenges`;
      throw new DataError(`${field}.challenge`, made.challenge, reason);
    }
    return { ...made, input: rodOf(made.input, `${field}.input`) };
  });
  return { ...result, assignment, tries };
}

/** What is no object is left for the schema to refuse. */
function including(what: object, input: unknown): unknown {
  return typeof input === 'object' && input !== null ? { ...what, ...input } : input;
}

function rodOf(made: CodedRod, field: string): HomeworkTry['input'] {
  const input = decodeRod(made, field);
  for (const part of ['elevation_deg', 'azimuth_deg'] as const) {
    const wild = [input[part]].flat().find((value) => Math.abs(value) > 360);
    if (wild !== undefined) {
      throw new DataError(`${field}.${part}`, wild, 'must be an angle from −360 to 360');
    }
  }
  return input;
}
