import { answersTo, countVotes } from './clinic-answers';
import { partOf } from './clinic-flow';
import type { Room } from './rooms';
import type { Db } from './store';
import type { FirstVote } from '../wire';

/** Null unless a later vote is revealed. */
export async function firstVote(db: Db, { id, state }: Room): Promise<FirstVote | null> {
  const { kind } = state.plan[state.at];
  const isAsked = kind === 'predict' || kind === 'ask';
  if (!isAsked || state.phase !== 'revealed' || state.ballot === 1) return null;
  const first = partOf({ at: state.at, ballot: 1 });
  const then = state.hands[first];
  return {
    counts: countVotes(await answersTo(db, id, first), then),
    hasHandsAlone: handsIn(then) > 0 && handsIn(state.hands[partOf(state)]) === 0
  };
}

export function handsIn(hands: Record<string, number> = {}): number {
  return Object.values(hands).reduce((sum, count) => sum + count, 0);
}
