import type { RequestEvent } from '@sveltejs/kit';
import type { PhoneAddress } from '../wire';

/** Set by our own server alone: the addresses of this machine on its network, comma-separated. */
const LAN_HEADER = 'x-feltfoot-lan';

/**
 * The address that a link or code for phones must carry. Whoever opened the page on the machine that
 * serves it sees “localhost” there, which on a phone is the phone itself.
 */
export function phoneAddressOf({
  url,
  request
}: Pick<RequestEvent, 'url' | 'request'>): PhoneAddress {
  if (!isLoopback(url.hostname)) return { origin: url.origin, byPhone: true };
  const [address] = (request.headers.get(LAN_HEADER) ?? '').split(',').filter(Boolean);
  if (!address) return { origin: url.origin, byPhone: false };
  const there = new URL(url.origin);
  there.hostname = address;
  return { origin: there.origin, byPhone: true };
}

function isLoopback(name: string): boolean {
  return name === 'localhost' || name === '[::1]' || /^127\.\d+\.\d+\.\d+$/.test(name);
}
