import * as v from 'valibot';
import { DataError, parseChallenge, parseData, type Challenge } from '../scoring';
import { decodeRod, encodeRod, MOST_SAMPLES, type CodedRod } from './rod-code';
import { nameSchema, timeSchema } from './fields';
import type { StoredTry } from './record';

/** Homework that travels without a server. The format is described in docs/packet-format.md. */
export const PACKET_FORMAT = 'feltfoot-homework';
export const PACKET_VERSION = 1;

/** How much of the bait is seen, and how much is said, while homework is done. */
export const HOMEWORK_PHASES = ['seen', 'half_seen', 'unseen'] as const;
export type HomeworkPhase = (typeof HOMEWORK_PHASES)[number];

/** What a guide asks of a client. Challenges are whole, with the guide's own gear and water. */
export interface Assignment {
  title: string;
  /** Who asks, as the client knows them; may be empty. */
  from: string;
  note: string;
  /** Ids of lessons to go through. */
  lessons: string[];
  challenges: Challenge[];
  /** How many tries of each challenge. */
  tries: number;
  phase: HomeworkPhase;
  /** Last day, as 2031-05-30, or none. */
  due: string | null;
}

export interface HomeworkTry {
  /** Which of the assignment's challenges, from 0. */
  challenge: number;
  at: string;
  input: StoredTry['input'];
  /** How far the client thought the bait had gone before it was shown, m towards the angler. */
  guess_m?: number;
}

/** What a client hands back: the homework it answers, and what the hand did. No marks. */
export interface HomeworkResult {
  assignment: Assignment;
  /** Who did it, as the guide knows them; may be empty. */
  by: string;
  /** Version of the bait model under which it was done. */
  model: string;
  tries: HomeworkTry[];
}

export type Packet =
  { kind: 'assignment'; assignment: Assignment } | { kind: 'result'; result: HomeworkResult };

/** Bounds of what comes in from outside. */
export const MOST = { challenges: 12, lessons: 30, tries: 40, note: 1000, line: 80 };
const MOST_TRIES = MOST.challenges * MOST.tries;
const LETTERS_A_SAMPLE = 7;

const line = v.pipe(v.string(), v.maxLength(MOST.line, `must be ${MOST.line} letters or fewer`));
const coded = v.pipe(v.string(), v.maxLength(MOST_SAMPLES * LETTERS_A_SAMPLE, 'is too long'));
const angle = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));

const assignmentSchema = v.strictObject({
  title: v.pipe(line, v.regex(/\S/, 'must not be empty')),
  from: line,
  note: v.pipe(v.string(), v.maxLength(MOST.note, `must be ${MOST.note} letters or fewer`)),
  lessons: v.pipe(v.array(nameSchema), v.maxLength(MOST.lessons, 'too many lessons')),
  challenges: v.pipe(v.array(v.unknown()), v.maxLength(MOST.challenges, 'too many challenges')),
  tries: v.pipe(
    v.number(),
    v.integer('must be a whole number'),
    v.minValue(1, `must be from 1 to ${MOST.tries}`),
    v.maxValue(MOST.tries, `must be from 1 to ${MOST.tries}`)
  ),
  phase: v.picklist(HOMEWORK_PHASES),
  due: v.nullable(v.pipe(v.string(), v.isoDate('must be a day like 2031-05-30')))
});

const resultSchema = v.strictObject({
  assignment: v.unknown(),
  by: line,
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
        guess_m: v.optional(v.pipe(v.number(), v.minValue(-100), v.maxValue(100)))
      })
    ),
    v.maxLength(MOST_TRIES, 'too many tries')
  )
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

/** Reads a packet. Throws DataError naming the field and the value of the first fault. */
export function parsePacket(input: unknown): Packet {
  const { format, version, kind, ...rest } = parseData(v.looseObject({}), input);
  if (format !== PACKET_FORMAT) throw new DataError('format', format, `must be ${PACKET_FORMAT}`);
  if (version !== PACKET_VERSION) {
    throw new DataError('version', version, `this Feltfoot reads version ${PACKET_VERSION}`);
  }
  if (kind === 'assignment') {
    return { kind, assignment: parseAssignment(rest.assignment, 'assignment') };
  }
  if (kind === 'result') return { kind, result: parseResult(rest.result) };
  throw new DataError('kind', kind, 'must be assignment or result');
}

function parseAssignment(input: unknown, field: string): Assignment {
  const assignment = within(field, () => parseData(assignmentSchema, input));
  if (assignment.challenges.length + assignment.lessons.length === 0) {
    throw new DataError(`${field}.challenges`, [], 'must ask for a lesson or a challenge');
  }
  const challenges = assignment.challenges.map((challenge, i) =>
    within(`${field}.challenges.${i}`, () => parseChallenge(challenge))
  );
  return { ...assignment, challenges };
}

function parseResult(input: unknown): HomeworkResult {
  const result = within('result', () => parseData(resultSchema, input));
  const assignment = parseAssignment(result.assignment, 'result.assignment');
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

/** Names a fault from where the part stands in the whole. */
function within<T>(field: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    throw new DataError([field, error.path].filter(Boolean).join('.'), error.value, error.reason);
  }
}
