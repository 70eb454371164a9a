import type { RequestEvent } from '@sveltejs/kit';
import { timingSafeEqual } from 'node:crypto';
import { Refusal } from './faults';
import { hashToken } from './token';

/** This machine's own, as the socket says it. */
const LOOPBACK = /^(127\.\d+\.\d+\.\d+|::1|::ffff:127\.\d+\.\d+\.\d+)$/;

/** Refuses who may not read the counters. What a proxy passes on comes from this machine only in seeming. */
export function refuseStranger(
  { request, getClientAddress }: Pick<RequestEvent, 'request' | 'getClientAddress'>,
  key: string | undefined
): void {
  const { headers } = request;
  const isPassedOn = headers.has('x-forwarded-for') || headers.has('forwarded');
  const may = key
    ? isSame(headers.get('authorization') ?? '', `Bearer ${key}`)
    : LOOPBACK.test(getClientAddress()) && !isPassedOn;
  if (!may) throw new Refusal(403, 'The counters are not for everybody. See FELTFOOT_METRICS_KEY.');
}

const isSame = (a: string, b: string) =>
  timingSafeEqual(Buffer.from(hashToken(a)), Buffer.from(hashToken(b)));
