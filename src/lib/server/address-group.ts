import { createHash } from 'node:crypto';

/**
 * Groups, of 16^3: a crowd from one address shares one, and another hall falls into the same by one chance in
 * 4,096; while each group holds a million addresses of IPv4, so that none can be told from it.
 */
const DIGITS = 3;

/** Which group an address falls into, in this room alone. */
export function addressGroup(room: string, address: string): string {
  return createHash('sha256').update(`${room} ${address}`).digest('hex').slice(0, DIGITS);
}
