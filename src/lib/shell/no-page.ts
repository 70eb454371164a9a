/** Why an address shows no page of its own. */
export type NoPageReason = 'missing' | 'no-connection' | 'no-server' | 'broken';

/** What browsers say when a request got no answer at all; each its own words. */
const NO_ANSWER = /failed to fetch|networkerror|load failed|network connection/i;

/** Where a page was found missing, and what its browser knew then. */
export interface NoPageGiven {
  status: number;
  message: string;
  isOnline: boolean;
  /** False in a static folder. */
  hasServer: boolean;
  /** Address below the app's own base. */
  path: string;
}

/** Rooms that need a program of ours behind them; guides write homework by link without one. */
const SERVED = /^\/(clinic|guide)(\/|$)/;

export function noPageReason(given: NoPageGiven): NoPageReason {
  const { status, message, isOnline, hasServer, path } = given;
  if (!hasServer && SERVED.test(path)) return 'no-server';
  if (!isOnline || NO_ANSWER.test(message)) return 'no-connection';
  return status === 404 ? 'missing' : 'broken';
}
