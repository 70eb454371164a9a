import { Refused } from '$lib/app/connection';
import type { Parcel } from './shelf';
import type { HomeworkSubmission } from '$lib/wire';

/** Answers after which sending the same again is no use. */
const FOR_GOOD = new Set([400, 403, 404, 409, 410, 413, 415, 422]);

/**
 * Sends what waits, one after the other, until something does not get through. Sending twice is safe:
 * the server counts an id once. @returns the parcels as they now are
 */
export async function deliver(
  parcels: readonly Parcel[],
  send: (sent: HomeworkSubmission) => Promise<unknown>,
  keep: (parcel: Parcel) => Promise<void>
): Promise<Parcel[]> {
  const now = [...parcels];
  for (const [i, parcel] of parcels.entries()) {
    if (parcel.state !== 'waiting') continue;
    const next = await attempt(parcel, send);
    if (next === parcel) break;
    await keep(next);
    now[i] = next;
  }
  return now;
}

async function attempt(
  parcel: Parcel,
  send: (sent: HomeworkSubmission) => Promise<unknown>
): Promise<Parcel> {
  try {
    await send(parcel.sent);
    return { ...parcel, state: 'taken' };
  } catch (error) {
    if (!(error instanceof Refused) || !FOR_GOOD.has(error.status)) return parcel;
    return { ...parcel, state: 'refused', why: error.message };
  }
}
