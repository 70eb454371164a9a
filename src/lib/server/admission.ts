import { type ExpressionBuilder, sql } from 'kysely';
import type { SilentCrowd } from '../wire';
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

/** So many seats that came in one minute from one place are a crowd that can be cleared by itself. */
const A_CROWD = 20;
/** More would be no help. */
const MOST_CROWDS = 5;
/** As much of a time as says its minute: 2031-05-01T08:00 */
const MINUTE_LENGTH = 16;

/** The largest crowds among the seats that have answered nothing, as they came. */
export async function silentCrowds(db: Db, room: string): Promise<SilentCrowd[]> {
  const minute = sql<string>`substr(joined_at, 1, ${sql.lit(MINUTE_LENGTH)})`;
  const rows = await db
    .selectFrom('seats')
    .select((of) => ['address_group as group', minute.as('minute'), of.fn.countAll().as('count')])
    .where('room_id', '=', room)
    .where(isSilent)
    .groupBy(['address_group', minute])
    .having((of) => of.fn.countAll(), '>=', A_CROWD)
    .orderBy('count', 'desc')
    .limit(MOST_CROWDS)
    .execute();
  return rows
    .map(({ group, minute, count }) => ({ group, minute: `${minute}Z`, count: Number(count) }))
    .sort((a, b) => a.minute.localeCompare(b.minute));
}

/**
 * Takes out the seats that have answered nothing. Their phones come in again, as any other, once the
 * door is open.
 * @param crowd only those that came in this minute from this group of addresses
 */
export async function clearSilent(
  db: Db,
  guide: Guide,
  id: string,
  crowd?: Pick<SilentCrowd, 'group' | 'minute'>
): Promise<void> {
  await roomOf(db, guide, id);
  const gone = await db
    .deleteFrom('seats')
    .where('room_id', '=', id)
    .$if(crowd !== undefined, (seats) =>
      seats
        .where('address_group', '=', crowd?.group ?? '')
        .where('joined_at', 'like', `${crowd?.minute.slice(0, MINUTE_LENGTH)}%`)
    )
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
