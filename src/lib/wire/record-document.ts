import * as v from 'valibot';
import { storedAnswer } from './answer';
import {
  lessonProgress,
  prediction,
  RECORD_VERSION,
  setAside,
  settings,
  type LearnerRecord,
  type SetAside
} from './record';
import { dayPlan } from './day-plan';
import { firstSettings } from './empty-record';
import { logEntry, spellDraft } from './log-entry';
import { outfit } from './outfit';
import { clubSession, testSession } from './test-session';
import { storedTry } from './try';

export const RECORD_FORMAT = 'feltfoot-record';

/** A record as it is stored and as it leaves in a file. See docs/record-format.md. */
export interface RecordDocument extends LearnerRecord {
  format: typeof RECORD_FORMAT;
  version: number;
}

/** A document that is no record at all, or one of a Feltfoot newer than this. */
export class RecordError extends Error {
  constructor(
    readonly field: 'document' | 'format' | 'version',
    readonly value: unknown,
    reason: string
  ) {
    super(reason);
    this.name = 'RecordError';
  }
}

/** Turns a document of one version into one of the next. */
type Migration = (document: Record<string, unknown>) => Record<string, unknown>;

/**
 * The first turns version 1 into version 2, and so on. Version 1 had no questions to answer, version 2
 * no gear of one's own, version 3 neither plans nor a log, the tries of version 4 no marks, and version 5
 * neither a spell half filled in nor a club.
 */
const migrations: readonly Migration[] = [
  (first) => ({ ...first, answers: [] }),
  (second) => ({ ...second, outfits: [], sessions: [] }),
  (third) => ({ ...third, plans: [], entries: [] }),
  (fourth) => fourth,
  (fifth) => ({ ...fifth, draft: null, club: [] })
];

export function toDocument(record: LearnerRecord): RecordDocument {
  return { format: RECORD_FORMAT, version: RECORD_VERSION, ...record };
}

/**
 * Reads a record of this or an older version. Parts that do not parse are set aside with the reason
 * and the time `at`, and the rest is read. Throws RecordError when it is no record, or a newer one.
 */
export function readDocument(
  document: unknown,
  at: string,
  steps: readonly Migration[] = migrations
): LearnerRecord {
  const current = migrate(document, steps);
  const aside: SetAside[] = [];
  const list = <S extends v.GenericSchema>(what: string, schema: S) =>
    readList(what, schema, current[what], at, aside);
  const read = {
    settings: readOne('settings', settings, firstSettings, current.settings, at, aside),
    draft: readOne('draft', v.nullable(spellDraft), null, current.draft, at, aside),
    predictions: list('predictions', prediction),
    progress: list('progress', lessonProgress),
    answers: list('answers', storedAnswer),
    outfits: list('outfits', outfit),
    plans: list('plans', dayPlan),
    entries: list('entries', logEntry),
    tries: list('tries', storedTry),
    sessions: list('sessions', testSession),
    club: list('club', clubSession)
  };
  return { ...read, setAside: [...list('setAside', setAside), ...aside] };
}

function migrate(document: unknown, steps: readonly Migration[]): Record<string, unknown> {
  if (!isObject(document)) throw new RecordError('document', document, 'This is no record.');
  const { format, version } = document;
  if (format !== RECORD_FORMAT) {
    throw new RecordError('format', format, 'This isn’t a Feltfoot record.');
  }
  const newest = steps.length + 1;
  if (!Number.isInteger(version) || (version as number) < 1) {
    throw new RecordError('version', version, `There is no version ${JSON.stringify(version)}.`);
  }
  if ((version as number) > newest) {
    const reason = `This record is of version ${version}; this Feltfoot reads up to ${newest}.`;
    throw new RecordError('version', version, reason);
  }
  return steps.slice((version as number) - 1).reduce((old, step) => step(old), document);
}

function readOne<S extends v.GenericSchema>(
  what: string,
  schema: S,
  fallback: v.InferOutput<S>,
  value: unknown,
  at: string,
  aside: SetAside[]
): v.InferOutput<S> {
  if (value === undefined) return fallback;
  const parsed = v.safeParse(schema, value);
  if (parsed.success) return parsed.output;
  aside.push({ what, why: reasonOf(parsed.issues[0]), at, value });
  return fallback;
}

function readList<S extends v.GenericSchema>(
  what: string,
  schema: S,
  value: unknown,
  at: string,
  aside: SetAside[]
): v.InferOutput<S>[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    aside.push({ what, why: 'expected a list', at, value });
    return [];
  }
  const good: v.InferOutput<S>[] = [];
  value.forEach((entry, i) => {
    const parsed = v.safeParse(schema, entry, { abortEarly: true });
    if (parsed.success) good.push(parsed.output);
    else aside.push({ what: `${what}.${i}`, why: reasonOf(parsed.issues[0]), at, value: entry });
  });
  return good;
}

function reasonOf(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  return path ? `${path}: ${issue.message}` : issue.message;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
