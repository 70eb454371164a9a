import { type Deletion, hashOf, NOTED } from './deletions';
import type { Tables } from './tables';

/** A row of a backup with the table that it is of. */
export type BackupRow = [keyof Tables, Record<string, unknown>];

/** What a row belongs to: with that it goes. */
const PARENTS: Partial<Record<keyof Tables, readonly [column: string, of: (keyof Tables)[]][]>> = {
  sessions: [['space_id', ['spaces']]],
  passkeys: [['space_id', ['spaces']]],
  challenges: [['space_id', ['spaces']]],
  assignments: [['space_id', ['spaces']]],
  rooms: [['space_id', ['spaces']]],
  clients: [['assignment_id', ['assignments']]],
  seats: [['room_id', ['rooms']]],
  submissions: [
    ['scope', ['clients', 'seats']],
    ['parent', ['assignments', 'rooms']]
  ]
};

/**
 * The rows of a backup without what was deleted since it was made, and with a secret that was renewed
 * since: the old one, its cookies and passkeys stay void.
 * @param rows in the order of `TABLE_NAMES`: what others belong to comes first
 * @param since ISO time at which the backup was made
 */
export function withoutDeleted(
  rows: readonly BackupRow[],
  deletions: readonly Deletion[],
  since: string
): BackupRow[] {
  const later = deletions.filter(({ at }) => at >= since);
  const gone = new Set(later.map(({ kind, hash }) => `${kind} ${hash}`));
  const renewed = new Map(
    later.flatMap(({ kind, hash, more }) => (kind === 'secret' && more ? [[hash, more]] : []))
  );
  const out = new Set<string>();
  const isGone = ([table, row]: BackupRow): boolean => {
    const [kind, column] = NOTED[table as keyof typeof NOTED] ?? [];
    const isNamed = column !== undefined && gone.has(`${kind} ${hashOf(String(row[column]))}`);
    const belongs = (PARENTS[table] ?? []).some(([at, tables]) =>
      tables.some((one) => out.has(`${one} ${row[at]}`))
    );
    const isWayIn = table === 'sessions' || table === 'passkeys' || table === 'challenges';
    return isNamed || belongs || (isWayIn && renewed.has(hashOf(String(row.space_id))));
  };
  return rows.flatMap(([table, row]): BackupRow[] => {
    if (isGone([table, row])) {
      out.add(`${table} ${row.id}`);
      return [];
    }
    const secret = table === 'spaces' ? renewed.get(hashOf(String(row.id))) : undefined;
    return [[table, secret ? { ...row, ...secret } : row]];
  });
}
