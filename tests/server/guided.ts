import { afterAll, beforeAll } from 'vitest';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore, type Store, type StorePlace } from '../../src/lib/server/store';
import type { StoreKind } from './stores';

/** A store of its own for a suite, and a guide with a space in it; there once the tests run. */
export interface Guided {
  place: StorePlace;
  store: Store;
  guide: Guide;
}

/** To be called in a describe: opens before its tests and closes after them. @param now ISO time */
export function guided(kind: StoreKind, now: string): Guided {
  const here = {} as Guided;
  let server: Awaited<ReturnType<StoreKind['start']>>;
  beforeAll(async () => {
    server = await kind.start();
    here.place = await server.fresh();
    const store = await openStore(here.place);
    const secret = await createSpace(store.db, 'Reed', now);
    const guide = await guideOf(store.db, await startSession(store.db, secret, now), now);
    Object.assign(here, { store, guide });
  });
  afterAll(async () => {
    await here.store?.close();
    await server?.stop();
  });
  return here;
}
