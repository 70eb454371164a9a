import type { Db } from './store';

const DAY_MS = 86_400_000;

/** @param from ISO time @returns ISO time so many days later */
export function daysAfter(from: string, days: number): string {
  return new Date(Date.parse(from) + days * DAY_MS).toISOString();
}

/** Deleted by one statement: SQLite takes 32,766 values, and answers wait meanwhile. */
const AT_ONCE = 200;

async function inParts(ids: readonly string[], work: (some: string[]) => Promise<void>) {
  for (let i = 0; i < ids.length; i += AT_ONCE) await work(ids.slice(i, i + AT_ONCE));
}

/** Deletes homework with its clients and all that they sent. */
export function deleteAssignments(db: Db, ids: readonly string[]): Promise<void> {
  return inParts(ids, (some) =>
    db.transaction().execute(async (inOne) => {
      await inOne.deleteFrom('submissions').where('parent', 'in', some).execute();
      await inOne.deleteFrom('clients').where('assignment_id', 'in', some).execute();
      await inOne.deleteFrom('assignments').where('id', 'in', some).execute();
    })
  );
}

/** Deletes clinics with their seats and answers. */
export function deleteRooms(db: Db, ids: readonly string[]): Promise<void> {
  return inParts(ids, (some) =>
    db.transaction().execute(async (inOne) => {
      await inOne.deleteFrom('submissions').where('parent', 'in', some).execute();
      await inOne.deleteFrom('seats').where('room_id', 'in', some).execute();
      await inOne.deleteFrom('rooms').where('id', 'in', some).execute();
    })
  );
}

/**
 * Deletes what came in while what it belongs to was being deleted: a try takes a while to grade, and
 * its client may go meanwhile.
 */
async function deleteOrphans(db: Db): Promise<void> {
  await db
    .deleteFrom('clients')
    .where(({ not, exists, selectFrom: from }) =>
      not(
        exists(
          from('assignments')
            .select('assignments.id')
            .whereRef('assignments.id', '=', 'clients.assignment_id')
        )
      )
    )
    .execute();
  await db
    .deleteFrom('seats')
    .where(({ not, exists, selectFrom: from }) =>
      not(exists(from('rooms').select('rooms.id').whereRef('rooms.id', '=', 'seats.room_id')))
    )
    .execute();
  await db
    .deleteFrom('submissions')
    .where(({ not, exists, selectFrom: from }) =>
      not(
        exists(
          from('clients').select('clients.id').whereRef('clients.id', '=', 'submissions.scope')
        )
      )
    )
    .where(({ not, exists, selectFrom: from }) =>
      not(exists(from('seats').select('seats.id').whereRef('seats.id', '=', 'submissions.scope')))
    )
    .execute();
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
  await deleteAssignments(db, assignments.map(idOf));
  await deleteRooms(db, rooms.map(idOf));
  // Homework with a last day months ahead outlives its guide's visits, and its space with it.
  const spaces = await db
    .selectFrom('spaces')
    .select('id')
    .where('keep_until', '<', now)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom('assignments')
            .select('assignments.id')
            .whereRef('assignments.space_id', '=', 'spaces.id')
        )
      )
    )
    .execute();
  for (const { id } of spaces) await deleteSpace(db, id);
  for (const table of ['sessions', 'challenges'] as const) {
    await db.deleteFrom(table).where('ends_at', '<', now).execute();
  }
  await deleteOrphans(db);
  return assignments.length + rooms.length + spaces.length;
}

const idOf = ({ id }: { id: string }) => id;
