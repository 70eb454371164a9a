import { invalidateAll } from '$app/navigation';
import { navigating } from '$app/state';

/**
 * Asks the server again for what a page shows, once who is going on to another page is there: asked for
 * meanwhile, Kit would take it for the later wish, and the link that was pressed would lead nowhere.
 */
export async function readAnew(): Promise<void> {
  while (navigating.complete) await navigating.complete.catch(() => {});
  await invalidateAll();
}
