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
const SMOOTH: ReadonlySet<string> = new Set(['sand', 'clay']);

/** No pace of a drag and no weight keeps it from that: common practice, no source. */
const OVER_MUD = 'Mud: it jumps an inch or two as it lets go, at any weight. Pull slow.';

/** What the model's drags leave out of this bottom; empty for a smooth one, and where nobody drags. */
export function overGround(ground: GroundKind): string {
  if (ground === 'mud') return OVER_MUD;
  if (!isDragged(ground) || SMOOTH.has(ground)) return '';
  const [over, does] = ROUGH[ground] ?? [ground, 'catches'];
  return `Times are for smooth bottom. Over ${over}: shorter, slower, and it ${does}.`;
}
