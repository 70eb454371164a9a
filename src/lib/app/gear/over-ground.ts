import { isDragged } from '$lib/course';
import type { GroundKind } from '$lib/model';

/** Bottoms that are not smooth, and what a jig does over them: common practice, no source. */
const ROUGH: Partial<Record<GroundKind, readonly [over: string, does: string]>> = {
  gravel: ['gravel', 'ticks'],
  'chunk rock': ['chunk rock', 'knocks'],
  boulders: ['boulders', 'climbs and drops'],
  stump: ['stumps', 'stops dead'],
  'shell bed': ['shells', 'crunches']
};
const SMOOTH: ReadonlySet<string> = new Set(['sand', 'mud', 'clay']);

/** What the model's drags leave out of this bottom; empty for a smooth one, and where nobody drags. */
export function overGround(ground: GroundKind): string {
  if (!isDragged(ground) || SMOOTH.has(ground)) return '';
  const [over, does] = ROUGH[ground] ?? [ground, 'catches'];
  return `Times are for smooth bottom. Over ${over}: shorter, slower, and it ${does}.`;
}
