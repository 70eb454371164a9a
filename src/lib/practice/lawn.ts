import type { LawnDrags } from '../wire';
import { SETTLED_WITHIN } from './design';
import { levelNow, type LevelNow } from './level-now';

/** A real rod on the lawn: how far it dragged for what was meant. */
export interface LawnHand {
  /** Distance over distance meant, of each drag, oldest first. */
  ratios: readonly number[];
  /** The same as it stands after the last; see levelNow. */
  level: LevelNow;
}

/** The hand of some sets of drags; null where none were made. Sets may come in any order. */
export function lawnHandOf(meant_m: number, sets: readonly LawnDrags[]): LawnHand | null {
  const inOrder = [...sets].sort((a, b) => (a.at < b.at ? -1 : 1));
  const ratios = inOrder.flatMap(({ moved_m }) => moved_m.map((moved) => moved / meant_m));
  return ratios.length < 2 ? null : { ratios, level: levelNow(ratios, SETTLED_WITHIN) };
}
