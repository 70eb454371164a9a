import { roomColumns, roomIn, type Room } from './rooms';
import type { Db } from './store';
import type { Stored } from './submissions';
import { queryBatcher } from './query-batcher';
import { hashToken } from './token';

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
  const [rooms, seats] = await Promise.all([roomsOf(db, asks), seatsOf(db, asks)]);
  return asks.map(({ code, token, id }) => {
    const room = rooms.get(code);
    if (!room) return null;
    const hash = hashToken(token);
    const rows = seats.filter((row) => row.room_id === room.id && row.token_hash === hash);
    const same = rows.find((row) => row.sent === id);
    const { seat = null, count = 0 } = rows[0] ?? {};
    return { room, seat, count: Number(count), before: same && storedIn(same) };
  });
});

async function roomsOf(db: Db, asks: Ask[]): Promise<Map<string, Room>> {
  const codes = unique(asks.map(({ code }) => code));
  const rows = await db
    .selectFrom('rooms')
    .select(roomColumns)
    .where('code', 'in', codes)
    .execute();
  return new Map(rows.map((row) => [row.code, roomIn(row)]));
}

/** Each seat that a token has in a room of the codes, with what it has sent under one of the ids. */
function seatsOf(db: Db, asks: Ask[]) {
  const codes = unique(asks.map(({ code }) => code));
  const hashes = unique(asks.map(({ token }) => hashToken(token)));
  const ids = unique(asks.map(({ id }) => id));
  return db
    .selectFrom('rooms')
    .innerJoin('seats', 'seats.room_id', 'rooms.id')
    .leftJoin('submissions as same', (join) =>
      join.onRef('same.scope', '=', 'seats.id').on('same.id', 'in', ids)
    )
    .select(['seats.room_id', 'seats.token_hash', 'seats.id as seat'])
    .select(['same.id as sent', 'same.payload_hash', 'same.reply'])
    .select((of) =>
      of
        .selectFrom('submissions')
        .select((all) => all.fn.countAll().as('count'))
        .whereRef('submissions.scope', '=', 'seats.id')
        .as('count')
    )
    .where('rooms.code', 'in', codes)
    .where('seats.token_hash', 'in', hashes)
    .execute();
}

function storedIn(row: { payload_hash: string | null; reply: string | null }): Stored | undefined {
  const { payload_hash, reply } = row;
  return payload_hash === null || reply === null ? undefined : { payload_hash, reply };
}

const unique = (texts: string[]): string[] => [...new Set(texts)];
