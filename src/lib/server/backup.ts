import { createHash } from 'node:crypto';
import type { Db } from './store';
import { TABLE_NAMES, type Tables } from './tables';

type TableName = keyof Tables;

const FORMAT = 'feltfoot backup 1';
/** Rows that are put back by one statement; SQLite takes 32,766 values. */
const AT_ONCE = 500;

/**
 * The whole store as lines of JSON: a head, a line a row, and a last line with their number and hash.
 * Both kinds of store write and read the same lines. One transaction: the rows are of one moment.
 */
export function backupLines(db: Db): Promise<string[]> {
  return db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (inOne) => {
      const lines = [JSON.stringify({ format: FORMAT })];
      for (const table of TABLE_NAMES) {
        const rows = await inOne.selectFrom(table).selectAll().execute();
        for (const row of rows) lines.push(JSON.stringify([table, row]));
      }
      return [...lines, JSON.stringify({ rows: lines.length - 1, sha256: hashOf(lines) })];
    });
}

/** Puts a backup into an empty store: all of it or, with a reason, nothing. @returns how many rows */
export async function restoreLines(db: Db, lines: readonly string[]): Promise<number> {
  const rows = checked(lines);
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
  return rows.length;
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

function checked(lines: readonly string[]): [TableName, unknown][] {
  const body = lines.slice(0, -1);
  if (body.length === 0 || JSON.parse(body[0]).format !== FORMAT) {
    throw new Error('This is no backup of Feltfoot’s, or one of another version.');
  }
  const { rows, sha256 } = JSON.parse(lines[lines.length - 1]);
  if (rows !== body.length - 1 || sha256 !== hashOf(body)) {
    throw new Error('The backup is damaged or not whole: its last line does not fit the others.');
  }
  const all: [TableName, unknown][] = body.slice(1).map((line) => JSON.parse(line));
  const strange = all.find(([table]) => !TABLE_NAMES.includes(table));
  if (strange) throw new Error(`The backup is of a later version: this one has no ${strange[0]}.`);
  return all;
}

function hashOf(lines: readonly string[]): string {
  const hash = createHash('sha256');
  // Not joined: a text has at most half a gigabyte.
  lines.forEach((line, i) => hash.update(i === 0 ? line : `\n${line}`));
  return hash.digest('hex');
}
