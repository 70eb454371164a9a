import type { Phase } from '../scoring';

/**
 * What a learner does in each phase of a skill. The numbers are proposals of this project and may be
 * changed here alone; what is said after a try, and what counts as mastered, stands in practice/design.ts.
 */
export const PHASES: readonly Phase[] = ['seen', 'half_seen', 'unseen', 'kept'];

/** Tries of a phase before the next one opens, and of one check. */
export const TRIES: Record<Phase, number> = { seen: 8, half_seen: 12, unseen: 16, kept: 12 };

/**
 * One task over and over, a few in turn, or all of them in any order: blocked practice first, random
 * last (Wulf & Shea 2002; Czyż 2024).
 */
export const ORDER: Record<Phase, 'blocked' | 'serial' | 'random'> = {
  seen: 'blocked',
  half_seen: 'serial',
  unseen: 'random',
  kept: 'random'
};

/** How many tasks a sitting that is not random draws on. */
export const TASKS_IN_TURN = { blocked: 1, serial: 4 } as const;

/** Tasks never practised before that a check holds. */
export const FRESH_TASKS = 1;
