import * as v from 'valibot';
import type { Challenge } from '../scoring';
import { challengeOf } from './clinic-answers';
import type { RoomState } from './clinic-flow';
import { Refusal } from './faults';
import { RateLimiter } from './rate-limit';
import { CODE_LENGTH } from './room-code';
import { act, roomByCode, roomOf, type Room } from './rooms';
import { madeId } from './shapes';
import type { Guide } from './spaces';
import type { Db } from './store';
import { hashToken, newToken, TOKEN_PATTERN } from './token';

/**
 * A phone as the rod of the big screen. Its link carries the room's code and a token made for this
 * alone; the room keeps the token's hash, and forgets it when the rod is put away. What the phone
 * sends is passed on to the screen and stored nowhere.
 */

/** In one batch at most; a phone sends a third of a second's worth then. */
export const MOST_SAMPLES = 20;

const time_ms = v.pipe(v.number(), v.minValue(0), v.maxValue(1e10));
const turned_deg = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));
const counted = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e9));

export const rodSchema = v.strictObject({
  link: v.pipe(v.string(), v.maxLength(100)),
  /** Made by the phone when it took the rod: one phone holds it at a time. */
  hold: madeId,
  /** Counts the batches: one that comes after a later one is dropped. */
  seq: counted,
  /** Counts how often the phone asked for another try. */
  again: counted,
  /** When by the phone's clock, ms, and how far the rod was turned from its start, degrees. */
  samples: v.pipe(v.array(v.tuple([time_ms, turned_deg])), v.maxLength(MOST_SAMPLES))
});
export type RodBatch = Omit<v.InferOutput<typeof rodSchema>, 'link'>;

/** Twenty batches a second and some to spare, by room: votes have limits of their own. */
export const rodLimit = new RateLimiter({ burst: 60, perMinute: 1500 });

/** What the phone must know of the water on the screen. */
export interface RodPlace {
  title: string;
  plane: Challenge['plane'];
  /** Where the rod starts, in the angle that the plane moves, degrees. */
  start_deg: number;
}

/** Makes a link for one phone; the one before is void. @returns what stands behind its # */
export async function lendRod(db: Db, guide: Guide, id: string, now: string): Promise<string> {
  const token = newToken();
  const { code, state } = await roomOf(db, guide, id);
  rodWater(state);
  await act(db, guide, id, { do: 'rod', hash: hashToken(token) }, now);
  return `${code}-${token}`;
}

/** The room whose rod this link is. Refuses when the rod was put away or the room is over. */
export async function rodRoom(db: Db, link: string, now: string): Promise<Room> {
  const token = link.slice(CODE_LENGTH + 1);
  if (!TOKEN_PATTERN.test(token)) throw new Refusal(404, GONE);
  const room = await roomByCode(db, link.slice(0, CODE_LENGTH));
  // In the same words for a wrong code: nothing here tells which codes there are.
  if (!room || room.ends_at <= now || room.state.isOver) throw new Refusal(404, GONE);
  if (room.state.rod !== hashToken(token)) throw new Refusal(404, GONE);
  return room;
}

const GONE = 'This link is the rod no more. Scan the screen again.';

/** The water that the rod works in: of this round, else of the tries before, else of those to come. */
export function rodWater({ plan, at }: Pick<RoomState, 'plan' | 'at'>): Challenge {
  const before = plan.slice(0, at + 1).reverse();
  const round = [...before, ...plan].find(({ kind }) => kind === 'try');
  if (!round) throw new Refusal(422, 'This clinic has nothing to try.');
  return challengeOf(round);
}

export function rodPlace(state: RoomState): RodPlace {
  const { title, plane, start } = rodWater(state);
  return { title, plane, start_deg: plane === 'lift' ? start.elevation_deg : start.azimuth_deg };
}
