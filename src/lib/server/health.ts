import type { ComputeState } from './compute';
import type { Store } from './store';

/** Whoever watches hears by now, ms: a store that has not answered is as good as none. */
const PATIENCE_MS = 800;

export interface Health {
  well: boolean;
  store: 'answers' | 'does not answer';
  /** Those who grade tries and work out questions. */
  compute: ComputeState;
}

/** How the server is, told in time whatever the store does. */
export async function healthOf(
  store: Store | Promise<Store>,
  compute: ComputeState
): Promise<Health> {
  let late: NodeJS.Timeout | undefined;
  const patience = new Promise<false>((resolve) => {
    late = setTimeout(() => resolve(false), PATIENCE_MS);
  });
  const well = await Promise.race([answers(store), patience]);
  clearTimeout(late);
  return { well, store: well ? 'answers' : 'does not answer', compute };
}

async function answers(store: Store | Promise<Store>): Promise<boolean> {
  try {
    await (await store).db.selectFrom('spaces').select('id').limit(1).execute();
    return true;
  } catch {
    return false;
  }
}
