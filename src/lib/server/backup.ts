import { createHash } from 'node:crypto';
import type { Deletion } from './deletions';
import type { Db } from './store';
import { TABLE_NAMES } from './tables';
import { type BackupRow, withoutDeleted } from './without-deleted';

const FORMAT = 'feltfoot backup 2';
/** Of versions before this one: says not when it was made, nor how long it is good for. */
const FIRST_FORMAT = 'feltfoot backup 1';
/** Rows that are put back by one statement; SQLite takes 32,766 values. */
const AT_ONCE = 500;

/** When a backup was made and until when it is good, ISO times. */
export interface Kept {
  made: string;
  until: string;
}

/**
 * The whole store as lines of JSON: a head, a line a row, and a last line with their number and hash.
 * Both kinds of store write and read the same lines. One transaction: the rows are of one moment.
 */
export function backupLines(db: Db, kept: Kept): Promise<string[]> {
  return db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (inOne) => {
      const lines = [JSON.stringify({ format: FORMAT, ...kept })];
      for (const table of TABLE_NAMES) {
        const rows = await inOne.selectFrom(table).selectAll().execute();
        for (const row of rows) lines.push(JSON.stringify([table, row]));
      }
      return [...lines, JSON.stringify({ rows: lines.length - 1, sha256: hashOf(lines) })];
    });
}

/**
 * Puts a backup into an empty store: all of it or, with a reason, nothing. What was deleted since it was
 * made stays deleted.
 * @param deletions what is known of them @param now ISO time: a backup that is over its time is refused
 * @returns how many rows were put back, and how many were left out
 */
export async function restoreLines(
  db: Db,
  lines: readonly string[],
  { deletions, now }: { deletions: readonly Deletion[]; now: string }
): Promise<{ rows: number; deleted: number }> {
  const all = checked(lines);
  const { made, until } = keptIn(lines[0]);
  if (until < now) {
    throw new Error(`The backup was good until ${until.slice(0, 10)}: it is not put back.`);
  }
  const rows = withoutDeleted(all, deletions, made);
  await db.transaction().execute(async (inOne) => {
    for (const table of TABLE_NAMES) {
      const held = await inOne.selectFrom(table).selectAll().limit(1).execute();
      if (held.length > 0) throw new Error(`The store is not empty: there are ${table}.`);
      const own = rows.filter(([name]) => name === table).map(([, row]) => row);
      for (let i = 0; i < own.length; i += AT_ONCE) {
        await inOne
          .insertInto(table)
          .values(own.slice(i, i + AT_ONCE) as never)
          .execute();
      }
    }
  });
  return { rows: rows.length, deleted: all.length - rows.length };
}

/** A backup of the first format is good for ever, and nothing is known of when it was made. */
function keptIn(head: string): Kept {
  const { format, made, until } = JSON.parse(head);
  return format === FORMAT ? { made, until } : { made: '', until: '9999' };
}

/** A file's lines. Taken from its bytes, since a text has at most half a gigabyte. */
export function linesIn(bytes: Buffer): string[] {
  const lines: string[] = [];
  for (let from = 0; from < bytes.length;) {
    const end = bytes.indexOf('\n', from);
    const to = end < 0 ? bytes.length : end;
    lines.push(bytes.toString('utf8', from, to));
    from = to + 1;
  }
  return lines;
}

function checked(lines: readonly string[]): BackupRow[] {
  const body = lines.slice(0, -1);
  if (body.length === 0 || ![FORMAT, FIRST_FORMAT].includes(JSON.parse(body[0]).format)) {
    throw new Error('This is no backup of Feltfoot’s, or one of another version.');
  }
  const { rows, sha256 } = JSON.parse(lines[lines.length - 1]);
  if (rows !== body.length - 1 || sha256 !== hashOf(body)) {
    throw new Error('The backup is damaged or not whole: its last line does not fit the others.');
  }
  const all: BackupRow[] = body.slice(1).map((line) => JSON.parse(line));
  const names: readonly string[] = TABLE_NAMES;
  const strange = all.find(([table]) => !names.includes(table));
  if (strange) throw new Error(`The backup is of a later version: this one has no ${strange[0]}.`);
  return all;
}

function hashOf(lines: readonly string[]): string {
  const hash = createHash('sha256');
  // Not joined: a text has at most half a gigabyte.
  lines.forEach((line, i) => hash.update(i === 0 ? line : `\n${line}`));
  return hash.digest('hex');
}
