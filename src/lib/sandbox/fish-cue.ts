import type { Bite } from '$lib/model';
import { isDragAndSnap, isForFish, type TaskStep } from './task-steps';
import { buttonOf, type Plane } from './rod-angles';

/** What a still rod says in words (felt-words.ts) once it bites. */
export const BITE_WORDS: Record<Bite['kind'], string> = {
  tap: 'a knock',
  mush: 'load builds',
  'weight gone': 'slack, nothing',
  'moving off': 'load builds'
};

/** What to look for while a fish may come, and the buttons that answer it; null where none is waited for. */
export function fishCue(
  steps: readonly TaskStep[],
  fish: Bite['kind'] | undefined,
  plane: Plane
): string | null {
  const at = steps.findIndex(isForFish);
  if (at < 0 || !fish) return null;
  const hasSnap = isDragAndSnap(steps);
  const names = steps
    .slice(at)
    .map(({ does, isSnap }) => buttonOf(isSnap && hasSnap && does === 'up' ? 'snap' : does, plane));
  const sign = `“${BITE_WORDS[fish]}”`;
  // It takes slack line away, which is seen before anything is felt.
  const on = fish === 'moving off' ? `Line runs off, ${sign}` : `Set on ${sign}`;
  return `${on}: ${[...new Set(names)].join(', then ')}.`;
}
