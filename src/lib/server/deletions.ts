import { createHash } from 'node:crypto';
import {
  appendFileSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  writeFileSync
} from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describeError, log } from './log';
import type { Db } from './opened-store';
import type { RowOf } from './tables';

/** Beside the store, and outlives it: what was deleted from it, so that a backup does not bring it back. */
export const DELETIONS_FILE = 'feltfoot.deletions';

/** Longer than any backup is good for, days: nothing older can come back. */
export const REMEMBERED_DAYS = 400;
const DAY_MS = 86_400_000;
/** Taken over by one statement. */
const AT_ONCE = 500;

/** One line of the file. Ids open nothing, and are hashed: the file tells who has a backup alone. */
const deletion = v.object({
  kind: v.picklist([
    'space',
    'secret',
    'session',
    'passkey',
    'assignment',
    'client',
    'room',
    'seat'
  ]),
  hash: v.string(),
  at: v.pipe(v.string(), v.isoTimestamp()),
  /** Of a renewed secret: the new hash and the key sealed under it, as the store has them. */
  more: v.optional(v.object({ manage_hash: v.string(), sealed_share_key: v.string() }))
});
export type Deletion = v.InferOutput<typeof deletion>;

/** The tables whose deletions are noted: what each row is called, and the column that names it. */
export const NOTED = {
  spaces: ['space', 'id'],
  sessions: ['session', 'token_hash'],
  passkeys: ['passkey', 'id'],
  assignments: ['assignment', 'id'],
  clients: ['client', 'id'],
  rooms: ['room', 'id'],
  seats: ['seat', 'id']
} as const;

export const hashOf = (id: string) =>
  createHash('sha256').update(`deleted ${id}`).digest('base64url');

/**
 * Takes what the store's triggers noted over into the file, and only then out of the store: killed between
 * the two it is there twice, which says the same.
 */
async function bringOut(db: Db, folder: string): Promise<void> {
  for (;;) {
    const rows = await db.selectFrom('deletions').selectAll().orderBy('n').limit(AT_ONCE).execute();
    if (rows.length === 0) return;
    append(folder, rows.map(lineOf).join(''));
    const last = rows[rows.length - 1].n;
    await db.deleteFrom('deletions').where('n', '<=', last).execute();
  }
}

/** The same where the store and the folder can be written; else it stays noted in the store until then. */
export async function bringOutIfPossible(db: Db, folder: string): Promise<void> {
  try {
    if (folder) await bringOut(db, folder);
  } catch (fault) {
    log('deletions not written', describeError(fault));
  }
}

function lineOf({ kind, id, more, at }: RowOf<'deletions'>): string {
  const told = more === '' ? {} : { more: JSON.parse(more) };
  return `${JSON.stringify({ kind, hash: hashOf(id), at, ...told })}\n`;
}

function append(folder: string, text: string): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = openSync(join(folder, DELETIONS_FILE), 'a', 0o600);
  try {
    appendFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** @param file path. Throws where a line is none of ours, by number. */
export function readDeletions(file: string): Deletion[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line, i) => {
      if (line === '') return [];
      try {
        return [v.parse(deletion, JSON.parse(line))];
      } catch {
        throw new Error(`${file}: line ${i + 1} is no deletion of Feltfoot’s.`);
      }
    });
}

/** Forgets what no backup can bring back any more. @param now ISO time */
export function forgetOld(folder: string, now: string): void {
  const file = join(folder, DELETIONS_FILE);
  if (!existsSync(file)) return;
  const all = readDeletions(file);
  const oldest = new Date(Date.parse(now) - REMEMBERED_DAYS * DAY_MS).toISOString();
  const kept = all.filter(({ at }) => at >= oldest);
  if (kept.length === all.length) return;
  writeFileSync(`${file}.new`, kept.map((one) => `${JSON.stringify(one)}\n`).join(''), {
    mode: 0o600
  });
  renameSync(`${file}.new`, file);
}
