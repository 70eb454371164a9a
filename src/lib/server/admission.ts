import type { ExpressionBuilder } from 'kysely';
import { roomOf } from './rooms';
import type { Guide } from './spaces';
import type { Db } from './store';
import type { Tables } from './tables';

/** Closed, a room gives no seat to a phone that has none; who has one comes back and votes as ever. */
export async function setAdmission(
  db: Db,
  guide: Guide,
  id: string,
  to: 'open' | 'closed',
  now: string
): Promise<void> {
  await roomOf(db, guide, id);
  const isClosing = to === 'closed';
  await db
    .updateTable('rooms')
    .set({ door_closed_at: isClosing ? now : null })
    .where('id', '=', id)
    .where('door_closed_at', isClosing ? 'is' : 'is not', null)
    .execute();
}

const isSilent = ({ not, exists, selectFrom }: ExpressionBuilder<Tables, 'seats'>) =>
  not(
    exists(
      selectFrom('submissions')
        .select('submissions.id')
        .whereRef('submissions.scope', '=', 'seats.id')
    )
  );

/** How many seats of a room have answered nothing at all. */
export async function silentIn(db: Db, room: string): Promise<number> {
  const { count } = await db
    .selectFrom('seats')
    .select((of) => of.fn.countAll().as('count'))
    .where('room_id', '=', room)
    .where(isSilent)
    .executeTakeFirstOrThrow();
  return Number(count);
}

/**
 * Takes out the seats that have answered nothing. Their phones come in again, as any other, once the
 * door is open.
 */
export async function clearSilent(db: Db, guide: Guide, id: string): Promise<void> {
  await roomOf(db, guide, id);
  const gone = await db
    .deleteFrom('seats')
    .where('room_id', '=', id)
    .where(isSilent)
    .returningAll()
    .execute();
  if (gone.length === 0) return;
  const ids = gone.map(({ id }) => id);
  const late = await db
    .selectFrom('submissions')
    .select('scope')
    .where('scope', 'in', ids)
    .execute();
  const heard = new Set(late.map(({ scope }) => scope));
  const back = gone.filter(({ id }) => heard.has(id));
  if (back.length === 0) return;
  // What was stored in that very moment may have been acknowledged: its seat stays.
  await db
    .insertInto('seats')
    .values(back)
    .onConflict((conflict) => conflict.column('id').doNothing())
    .execute();
}
