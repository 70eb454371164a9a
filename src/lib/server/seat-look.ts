import { roomColumns, roomIn, type Room } from './rooms';
import type { Db } from './store';
import type { Stored } from './submissions';
import { hashToken } from './token';

export interface SeatLook {
  room: Room;
  /** Null for a phone that has no seat yet. */
  seat: string | null;
  /** How many answers the seat has stored. */
  count: number;
  /** What is stored under the answer's id. */
  before: Stored | undefined;
}

/**
 * All that must be known before an answer is taken, by one statement: a room that votes together asks
 * for it five hundred times in seconds, and each way to a database is dearer than what is fetched.
 * @returns null where the code leads to no room; a room may be dead
 */
export async function lookUp(
  db: Db,
  { code, token, id }: { code: string; token: string; id: string }
): Promise<SeatLook | null> {
  const row = await db
    .selectFrom('rooms')
    .leftJoin('seats', (join) =>
      join.onRef('seats.room_id', '=', 'rooms.id').on('seats.token_hash', '=', hashToken(token))
    )
    .leftJoin('submissions as same', (join) =>
      join.onRef('same.scope', '=', 'seats.id').on('same.id', '=', id)
    )
    .select(roomColumns.map((column) => `rooms.${column}` as const))
    .select(['seats.id as seat', 'same.payload_hash', 'same.reply'])
    .select((of) =>
      of
        .selectFrom('submissions')
        .select((all) => all.fn.countAll().as('count'))
        .whereRef('submissions.scope', '=', 'seats.id')
        .as('count')
    )
    .where('rooms.code', '=', code)
    .executeTakeFirst();
  if (!row) return null;
  const { seat, count, payload_hash, reply, ...room } = row;
  const before = payload_hash === null || reply === null ? undefined : { payload_hash, reply };
  return { room: roomIn(room), seat, count: Number(count), before };
}
