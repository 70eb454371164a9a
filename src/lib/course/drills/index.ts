import type { Challenge } from '../../scoring';
import { count } from './count';
import { dragDrill } from './drag';
import type { Drill } from './drill';
import { hop } from './hop';
import { drillChallenge, idsOf, type Sitting } from './sitting';

/** Skills that are practised through all phases, generated from seeds. */
export const drills: readonly Drill[] = [dragDrill, hop, count];

/** A challenge of any drill by its id, or undefined. */
export function findDrillChallenge(id: string): Challenge | undefined {
  return drillChallenge(id, drills);
}

/** All challenges of a sitting, in the order of its tries. Runs the model for some of them. */
export function challengesOf(sitting: Sitting): Challenge[] {
  return idsOf(sitting).flatMap((id) => findDrillChallenge(id) ?? []);
}

export { idsOf, type Sitting };
export type { Drill };
