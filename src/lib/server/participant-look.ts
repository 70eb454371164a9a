import { sql } from 'kysely';
import { participantId, roomsByCode, type Room } from './rooms';
import type { Db } from './store';
import type { Stored } from './submissions';
import { queryBatcher } from './query-batcher';

/** A phone's own token, the code it came in with, and the id of the answer it sends. */
export interface Ask {
  code: string;
  token: string;
  id: string;
}

export interface ParticipantLook {
  room: Room;
  /** Null for a phone that has no seat yet. */
  seat: string | null;
  /** How many answers the seat has stored. */
  count: number;
  /** What is stored under the answer's id. */
  before: Stored | undefined;
}

/**
 * All that must be known before an answer is taken, for all who ask in the same moment.
 * @returns null where the code leads to no room; a room may be dead
 */
export const lookUp = queryBatcher(async (db, asks: Ask[]): Promise<(ParticipantLook | null)[]> => {
  const codes = asks.map(({ code }) => code);
  const rooms = await roomsByCode(db, codes);
  const keys = asks.map(({ code, token, id }) => {
    const room = rooms.get(code);
    return { room, seat: room ? participantId(room.id, token) : '', id };
  });
  const [counts, same] = await Promise.all([countsOf(db, keys), storedUnder(db, keys)]);
  return keys.map(({ room, seat, id }) => {
    if (!room) return null;
    const count = counts.get(seat);
    const before = same.get(nameOf(seat, id));
    return { room, seat: count === undefined ? null : seat, count: count ?? 0, before };
  });
});

interface Key {
  seat: string;
  id: string;
}

const nameOf = (seat: string, id: string) => `${seat} ${id}`;

/** How much each of the seats that there are has sent. */
async function countsOf(db: Db, keys: readonly Key[]): Promise<Map<string, number>> {
  const rows = await db
    .selectFrom('seats')
    .select('seats.id')
    .select((of) =>
      of
        .selectFrom('submissions')
        .select((all) => all.fn.countAll().as('count'))
        .whereRef('submissions.scope', '=', 'seats.id')
        .as('count')
    )
    .where('seats.id', 'in', unique(keys.map(({ seat }) => seat)))
    .execute();
  return new Map(rows.map(({ id, count }) => [id, Number(count)]));
}

/**
 * What is stored under these very pairs of seat and id: each seat with each id would be the square of a
 * room that votes together.
 */
async function storedUnder(db: Db, keys: readonly Key[]): Promise<Map<string, Stored>> {
  const pairs = keys.map(({ seat, id }) => sql`(${seat}, ${id})`);
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'id', 'payload_hash', 'reply'])
    .where(sql<boolean>`(scope, id) in (values ${sql.join(pairs)})`)
    .execute();
  return new Map(
    rows.map(({ scope, id, payload_hash, reply }) => [nameOf(scope, id), { payload_hash, reply }])
  );
}

const unique = (texts: string[]): string[] => [...new Set(texts)];
