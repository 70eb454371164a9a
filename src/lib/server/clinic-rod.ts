import type { Challenge } from '../scoring';
import { challengeOfRound } from './clinic-answers';
import { Refusal } from './faults';
import { RateLimiter } from './rate-limit';
import { CODE_LENGTH } from './room-code';
import { act, roomByCode, roomOf, type Room } from './rooms';
import type { Guide } from './spaces';
import type { Db } from './store';
import { hashToken, newToken } from './token';
import { type RodPlace, type RoomState, TOKEN_PATTERN } from '../wire';

/**
 * A phone as the rod of the big screen. Its link carries the room's code and a token made for this
 * alone; the room keeps the token's hash, and forgets it when the rod is put away. What the phone
 * sends is passed on to the screen and stored nowhere.
 */

/** Twenty batches a second and some to spare, by room: votes have limits of their own. */
export const rodLimit = new RateLimiter({ burst: 60, perMinute: 1500 });

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

const GONE = 'This link isn’t the rod anymore. Scan the screen again.';

/** The water that the rod works in: of this round, else of the tries before, else of those to come. */
export function rodWater({ plan, at }: Pick<RoomState, 'plan' | 'at'>): Challenge {
  const before = plan.slice(0, at + 1).reverse();
  const round = [...before, ...plan].find(({ kind }) => kind === 'try');
  if (!round) throw new Refusal(422, 'This clinic has nothing to try.');
  return challengeOfRound(round);
}

export function rodPlaceOf(state: RoomState): RodPlace {
  const { title, plane, start } = rodWater(state);
  return { title, plane, start_deg: plane === 'lift' ? start.elevation_deg : start.azimuth_deg };
}
