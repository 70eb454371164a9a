import type { Result } from '../model';
import { trueCall, type Challenge, type Guess } from '../scoring';

/** Calls of a try by who doesn't know what the jig did, after a move that was right. None may pass. */
export const LAZY_CALLS = ['no call', 'blind call', 'wrong call'] as const;
export type LazyCallName = (typeof LAZY_CALLS)[number];

/** What each of them says of this try: nothing; the same whatever it did; twice as much, and the other way. */
export function lazyCall(name: LazyCallName, challenge: Challenge, result: Result): Guess | null {
  if (name === 'no call') return null;
  const call = trueCall(challenge, result);
  const isBlind = name === 'blind call';
  switch (call.kind) {
    case 'travel':
      return isBlind
        ? { ...call, travel_m: 0, lifted: false }
        : { ...call, travel_m: 2 * call.travel_m, lifted: !call.lifted };
    case 'height':
      return { ...call, height_m: isBlind ? 0 : 2 * call.height_m };
    case 'down':
      return { ...call, isDown: !call.isDown };
  }
}
