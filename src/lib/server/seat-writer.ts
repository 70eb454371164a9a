import { sql } from 'kysely';
import { FOR_DISK, queryBatcher } from './query-batcher';
import type { Tables } from './tables';

type Seat = Tables['seats'];

/**
 * Makes the seats that are asked for in the same moment. The door is looked at by the same statement: nobody
 * slips in behind its closing, on any node. Each is true where its seat was made, false where the room is gone
 * or its door closed, or the seat was there.
 */
export const makeSeat = queryBatcher(async (db, seats: Seat[]): Promise<boolean[]> => {
  const rows = seats.map(
    ({ id, room_id, token_hash, joined_at, address_group }) =>
      sql`(${id}, ${room_id}, ${token_hash}, ${joined_at}, ${address_group})`
  );
  // Both kinds of store name the columns of VALUES so.
  const { rows: made } = await sql<{ id: string }>`
    insert into seats (id, room_id, token_hash, joined_at, address_group)
    select column1, rooms.id, column3, column4, column5
    from (values ${sql.join(rows)}) as wanted join rooms on rooms.id = column2
    where rooms.door_closed_at is null
    on conflict (id) do nothing
    returning id`.execute(db);
  const ids = new Set(made.map(({ id }) => id));
  return seats.map(({ id }) => ids.has(id));
}, FOR_DISK);
