import type { Move } from '../model';
import type { Challenge } from '../scoring';

/** Ways of ending a try while a fish could still come. None may pass any challenge in which one may. */
export const LAZY_WAITS = ['no wait', 'half the wait'] as const;
export type LazyWaitName = (typeof LAZY_WAITS)[number];

/** The reference up to its last wait, and of that nothing, or half. */
export function lazyWait(name: LazyWaitName, { reference }: Pick<Challenge, 'reference'>): Move {
  if (reference.kind !== 'sequence') return reference;
  const { moves } = reference;
  const at = moves.map(({ kind }) => kind).lastIndexOf('pause');
  const wait = moves[at];
  const before = moves.slice(0, at);
  if (name === 'no wait' || wait?.kind !== 'pause') return { ...reference, moves: before };
  return { ...reference, moves: [...before, { ...wait, duration_s: wait.duration_s / 2 }] };
}
