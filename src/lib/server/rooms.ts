import { nextState, newRoom, type RoomChange } from './clinic-flow';
import { addressGroup } from './address-group';
import { Refusal } from './faults';
import { deleteRooms } from './retention';
import { newCode } from './room-code';
import { makeSeat } from './seat-writer';
import type { Guide } from './spaces';
import type { Db } from './store';
import { storedRoom } from './stored';
import { forgetSent } from './submissions';
import { queryBatcher } from './query-batcher';
import { hashToken, newToken } from './token';
import type { RoomState } from '../wire';

export interface Room {
  id: string;
  space_id: string;
  code: string;
  state: RoomState;
  version: number;
  created_at: string;
  ends_at: string;
  /** Since when no new phone gets a seat; null while the door is open. */
  door_closed_at: string | null;
}

/** A code is alive for a long day's clinic, ms. */
const ALIVE_MS = 12 * 3_600_000;
/** More phones than any hall holds. */
const MOST_PARTICIPANTS = 2000;
const roomColumns = [
  'id',
  'space_id',
  'code',
  'state',
  'version',
  'created_at',
  'ends_at',
  'door_closed_at'
] as const;

export async function createRoom(
  db: Db,
  guide: Guide,
  opened: Pick<RoomState, 'name' | 'plan'>,
  now: string
): Promise<string> {
  const row = {
    id: newToken(),
    space_id: guide.space,
    code: newCode(),
    state: JSON.stringify(newRoom(opened)),
    version: 1,
    created_at: now,
    ends_at: new Date(Date.parse(now) + ALIVE_MS).toISOString()
  };
  await db.insertInto('rooms').values(row).execute();
  return row.id;
}

/** The guide's clinics, newest first. */
export async function roomsOf(db: Db, guide: Guide): Promise<Room[]> {
  const rows = await db
    .selectFrom('rooms')
    .select(roomColumns)
    .where('space_id', '=', guide.space)
    .orderBy('created_at', 'desc')
    .execute();
  return rows.map(roomIn);
}

/** One clinic of this guide's; refuses as well when it is another guide's. */
export async function roomOf(db: Db, guide: Guide, id: string): Promise<Room> {
  const row = await db
    .selectFrom('rooms')
    .select(roomColumns)
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .executeTakeFirst();
  if (!row) throw new Refusal(404, 'That clinic isn’t here.');
  return roomIn(row);
}

/** The clinics of these codes, dead or alive. */
export async function roomsByCode(db: Db, codes: string[]): Promise<Map<string, Room>> {
  const asked = [...new Set(codes)];
  const rows = await db
    .selectFrom('rooms')
    .select(roomColumns)
    .where('code', 'in', asked)
    .execute();
  return new Map(rows.map((row) => [row.code, roomIn(row)]));
}

/** The clinic of a code, found for all who come in the same moment. */
export const roomByCode = queryBatcher(async (db, codes: string[]): Promise<(Room | null)[]> => {
  const rooms = await roomsByCode(db, codes);
  return codes.map((code) => rooms.get(code) ?? null);
});

/** The clinic that a code on a screen led to, if it is alive. */
export function alive(room: Room | null, now: string): Room {
  return kept(room && room.ends_at > now ? room : null);
}

export function kept(room: Room | null): Room {
  if (room) return room;
  throw new Refusal(404, 'No clinic has that code now. Check the screen again.');
}

export async function roomById(db: Db, id: string): Promise<Room> {
  const row = await db
    .selectFrom('rooms')
    .select(roomColumns)
    .where('id', '=', id)
    .executeTakeFirst();
  if (!row) throw new Refusal(404, 'That clinic isn’t here.');
  return roomIn(row);
}

/** The room that a row holds. */
function roomIn(row: Omit<Room, 'state'> & { state: string }): Room {
  return {
    ...row,
    version: Number(row.version),
    state: storedRoom(row.state)
  };
}

/** Does what the instructor asked; two screens of one clinic cannot overwrite each other. */
export async function act(
  db: Db,
  guide: Guide,
  id: string,
  action: RoomChange,
  now: string
): Promise<void> {
  for (;;) {
    const { state, version } = await roomOf(db, guide, id);
    const { numUpdatedRows } = await db
      .updateTable('rooms')
      .set({ state: JSON.stringify(nextState(state, action, now)), version: version + 1 })
      .where('id', '=', id)
      .where('version', '=', version)
      .executeTakeFirst();
    if (numUpdatedRows === 1n) return;
  }
}

export async function deleteRoom(db: Db, guide: Guide, id: string): Promise<void> {
  await roomOf(db, guide, id);
  await deleteRooms(db, [id]);
}

/** The id of the seat that this token has in a room. */
export function participantId(room: string, token: string): string {
  return hashToken(`seat ${hashToken(token)} ${room}`);
}

/**
 * The seat of the phone that made this token; a phone that comes back has its place again.
 * @param address where it comes from; no more is kept of it than `addressGroup` tells
 * @param refuseCrowd throws where too many new ones have come from the same place
 */
export async function admit(
  db: Db,
  room: Room,
  token: string,
  now: string,
  { address = '', refuseCrowd = () => {} }: { address?: string; refuseCrowd?: () => void } = {}
): Promise<string> {
  const token_hash = hashToken(token);
  const id = participantId(room.id, token);
  if (await hasParticipant(db, id)) return id;
  if (room.state.isOver) throw new Refusal(410, 'This clinic is over.');
  if (room.door_closed_at !== null) throw new Refusal(403, CLOSED);
  if ((await participantsIn(db, room.id)) >= MOST_PARTICIPANTS)
    throw new Refusal(429, 'The room is full.');
  refuseCrowd();
  const address_group = addressGroup(room.id, address);
  const seat = { id, room_id: room.id, token_hash, joined_at: now, address_group };
  // None was made either where the same phone came twice at once.
  if (!(await makeSeat(db, seat)) && !(await hasParticipant(db, id))) {
    throw new Refusal(403, CLOSED);
  }
  return id;
}

const CLOSED = 'This clinic is locked. Ask the leader.';

/** Whether a seat is there now: looked for after what was written before it was asked. */
export const hasParticipant = queryBatcher(async (db, ids: string[]): Promise<boolean[]> => {
  const rows = await db.selectFrom('seats').select('id').where('id', 'in', ids).execute();
  const there = new Set(rows.map(({ id }) => id));
  return ids.map((id) => there.has(id));
});

/** Whether this is a seat of this room. */
export const isParticipantIn = queryBatcher(async (db, asks: { room: string; id: string }[]) => {
  const ids = asks.map(({ id }) => id);
  const rows = await db
    .selectFrom('seats')
    .select(['id', 'room_id'])
    .where('id', 'in', ids)
    .execute();
  const rooms = new Map(rows.map(({ id, room_id }) => [id, room_id]));
  return asks.map(({ room, id }) => rooms.get(id) === room);
});

/** How many of these are seats of this room, and not deleted. */
export async function countParticipants(
  db: Db,
  room: string,
  ids: readonly string[]
): Promise<number> {
  const asked = await Promise.all(ids.map((id) => isParticipantIn(db, { room, id })));
  return asked.filter((isIn) => isIn).length;
}

/**
 * Deletes a seat and all that came from it. The seat goes first and for itself: what is stored after
 * that finds its sender gone and goes too, and what was stored before goes here.
 */
export async function forgetParticipant(db: Db, room: string, token: string): Promise<void> {
  const id = participantId(room, token);
  await db.deleteFrom('seats').where('id', '=', id).execute();
  await forgetSent(db, id);
}

/** How many seats a room has: counted once for all who come in the same moment. */
export const participantsIn = queryBatcher(async (db, rooms: string[]): Promise<number[]> => {
  const rows = await db
    .selectFrom('seats')
    .select((of) => ['room_id', of.fn.countAll().as('count')])
    .where('room_id', 'in', [...new Set(rooms)])
    .groupBy('room_id')
    .execute();
  const counts = new Map(rows.map(({ room_id, count }) => [room_id, Number(count)]));
  return rooms.map((room) => counts.get(room) ?? 0);
});
