import type { Generated, Selectable } from 'kysely';

/**
 * What is stored. Portable column types only (text, integer, real), so that SQLite and PostgreSQL hold
 * the same rows. Times are ISO 8601 in UTC and sort as text; they are handed in by the caller.
 */
export interface Tables {
  /** A guide's own room. Its secret is known to the guide alone; here is only its hash. */
  spaces: {
    id: string;
    name: string;
    manage_hash: string;
    /** The key of the client links, readable only with the guide's secret. */
    sealed_share_key: string;
    created_at: string;
    keep_until: string;
  };
  /** A browser that holds the guide's cookie. */
  sessions: {
    token_hash: string;
    space_id: string;
    /** The same key, readable only with this cookie. */
    sealed_share_key: string;
    ends_at: string;
    /** When it was opened, and on what kind of machine, for its guide to tell it from others. */
    opened_at: string;
    device: string;
  };
  /** A second way in: an authenticator whose own secret reads the key again. */
  passkeys: {
    /** The credential's id, base64url. */
    id: string;
    space_id: string;
    public_key: string;
    /** How often the authenticator says it was used; 0 where it does not count. */
    counter: string;
    /** The same key, readable only with what the authenticator gives out. */
    sealed_share_key: string;
    created_at: string;
  };
  /** What an authenticator was asked and has not answered yet. */
  challenges: { token_hash: string; challenge: string; space_id: string; ends_at: string };
  assignments: {
    id: string;
    space_id: string;
    share_hash: string;
    /** JSON of an Assignment. */
    task: string;
    created_at: string;
    closed_at: string | null;
    keep_until: string;
  };
  clients: {
    id: string;
    assignment_id: string;
    token_hash: string;
    nickname: string;
    joined_at: string;
    /** What the guide wrote back. */
    note: string;
  };
  /** All that phones send. `scope` is the client or the seat that sent it, `parent` its homework or room. */
  submissions: {
    scope: string;
    id: string;
    parent: string;
    /** Challenge, lesson or ballot that it belongs to. */
    part: string;
    payload_hash: string;
    payload: string;
    /** JSON of what was answered, sent again word for word when the same comes twice. */
    reply: string;
    received_at: string;
  };
  rooms: {
    id: string;
    space_id: string;
    code: string;
    /** JSON of a RoomState. */
    state: string;
    version: number;
    created_at: string;
    ends_at: string;
    /** Since when no new phone gets a seat; null while the door is open. */
    door_closed_at: string | null;
  };
  seats: {
    id: string;
    room_id: string;
    token_hash: string;
    joined_at: string;
    /** Which of a few thousand groups its address falls into, in this room alone; says no address. */
    address_group: string;
  };
  /** Noted by triggers, and soon taken over into a file beside the store (deletions.ts). */
  deletions: {
    n: Generated<number>;
    kind: string;
    id: string;
    /** Of a renewed secret what is to be put in place of the old, JSON; else empty. */
    more: string;
    at: string;
  };
}

/** A row of a table, as it is read. */
export type RowOf<T extends keyof Tables> = Selectable<Tables[T]>;

/** What a backup holds, in an order in which rows can be put back. */
export const TABLE_NAMES = [
  'spaces',
  'sessions',
  'passkeys',
  'challenges',
  'assignments',
  'clients',
  'rooms',
  'seats',
  'submissions'
] as const satisfies readonly (keyof Tables)[];
