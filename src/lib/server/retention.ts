import type { Db } from './store';

const DAY_MS = 86_400_000;

/** @param from ISO time @returns ISO time so many days later */
export function daysAfter(from: string, days: number): string {
  return new Date(Date.parse(from) + days * DAY_MS).toISOString();
}

/** Deletes homework with its clients and all that they sent. */
export async function deleteAssignments(db: Db, ids: readonly string[]): Promise<void> {
  if (ids.length === 0) return;
  await db.transaction().execute(async (inOne) => {
    await inOne.deleteFrom('submissions').where('parent', 'in', ids).execute();
    await inOne.deleteFrom('clients').where('assignment_id', 'in', ids).execute();
    await inOne.deleteFrom('assignments').where('id', 'in', ids).execute();
  });
}

/** Deletes clinics with their seats and answers. */
export async function deleteRooms(db: Db, ids: readonly string[]): Promise<void> {
  if (ids.length === 0) return;
  await db.transaction().execute(async (inOne) => {
    await inOne.deleteFrom('submissions').where('parent', 'in', ids).execute();
    await inOne.deleteFrom('seats').where('room_id', 'in', ids).execute();
    await inOne.deleteFrom('rooms').where('id', 'in', ids).execute();
  });
}

/** Deletes a guide's space and everything in it. */
export async function deleteSpace(db: Db, space: string): Promise<void> {
  const assignments = await idsIn(db, 'assignments', space);
  const rooms = await idsIn(db, 'rooms', space);
  await deleteAssignments(db, assignments);
  await deleteRooms(db, rooms);
  for (const table of ['sessions', 'passkeys', 'challenges'] as const) {
    await db.deleteFrom(table).where('space_id', '=', space).execute();
  }
  await db.deleteFrom('spaces').where('id', '=', space).execute();
}

async function idsIn(db: Db, table: 'assignments' | 'rooms', space: string): Promise<string[]> {
  const rows = await db.selectFrom(table).select('id').where('space_id', '=', space).execute();
  return rows.map(({ id }) => id);
}

/** A clinic's answers are kept this long after its code has died, for the summary. */
export const ROOM_KEPT_DAYS = 90;

/** Deletes all whose time is over. @returns how many homeworks, clinics and spaces went. */
export async function deleteExpired(db: Db, now: string): Promise<number> {
  const assignments = await db
    .selectFrom('assignments')
    .select('id')
    .where('keep_until', '<', now)
    .execute();
  const rooms = await db
    .selectFrom('rooms')
    .select('id')
    .where('ends_at', '<', daysAfter(now, -ROOM_KEPT_DAYS))
    .execute();
  const spaces = await db.selectFrom('spaces').select('id').where('keep_until', '<', now).execute();
  await deleteAssignments(db, assignments.map(idOf));
  await deleteRooms(db, rooms.map(idOf));
  for (const { id } of spaces) await deleteSpace(db, id);
  for (const table of ['sessions', 'challenges'] as const) {
    await db.deleteFrom(table).where('ends_at', '<', now).execute();
  }
  return assignments.length + rooms.length + spaces.length;
}

const idOf = ({ id }: { id: string }) => id;
