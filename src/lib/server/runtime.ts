import { AddressLimit } from './address-limit';
import { CodeGuard } from './code-guard';
import { forgetOld } from './deletions';
import { Feed } from './feed';
import { describeError, log } from './log';
import { Metrics } from './metrics';
import { RateLimiter } from './rate-limit';
import { deleteExpired } from './retention';
import { StoreLost } from './store-marker';
import { openStore, placeFrom, type Store } from './store';

/** What one running server has: the store, the live feed, its limits and its counters. */
export interface Runtime {
  store: Store;
  feed: Feed;
}

const SWEEP_MS = 3_600_000;
/** What was deleted behind somebody who was reading, and what a crash would have to go through again. */
const CHECKPOINT_MS = 60_000;

export const metrics = new Metrics();

export const limits = {
  /** A phone making tries or votes: one every two seconds for long, a queue of days at once. */
  sender: new RateLimiter({ burst: 120, perMinute: 60 }),
  /**
   * New seats in one room from one address: a club hall behind one is in at once, a full one within five
   * minutes, as its phones ask again by themselves; and who wants to take all the seats leaves the guide
   * time to close the door.
   */
  seats: new RateLimiter({ burst: 700, perMinute: 300 }),
  /** New spaces from one address: a club's office, not a flood. */
  opening: new AddressLimit({
    each: { burst: 20, perMinute: 1 },
    block: { burst: 60, perMinute: 3 },
    all: { burst: 1000, perMinute: 60 }
  }),
  /** Passkeys asked for from one address: each leaves a challenge in the store for minutes. */
  beginning: new RateLimiter({ burst: 60, perMinute: 20 }),
  /** Homework and clinics set from one address: each may fill a request's size in the store. */
  setting: new RateLimiter({ burst: 120, perMinute: 20 })
};

export const codes = new CodeGuard();

let running: Promise<Runtime> | undefined;

/** The store is opened by the first who needs it: lessons are served without. */
export function runtime(): Promise<Runtime> {
  running ??= start().catch((error) => {
    running = undefined;
    // The one who runs the server must know which files; these words name no folder.
    if (error instanceof StoreLost) log('store lost', { says: error.message });
    throw error;
  });
  return running;
}

async function start(): Promise<Runtime> {
  const place = placeFrom(process.env);
  const store = await openStore(place);
  forgetOld(place.folder, new Date().toISOString());
  const feed = await Feed.open(store);
  metrics.gauge('listeners', () => feed.listeners);
  const sweep = setInterval(() => void sweepOnce(store), SWEEP_MS);
  sweep.unref();
  void sweepOnce(store);
  const tidy = setInterval(() => {
    void store.checkpoint();
    store.keepReserve();
  }, CHECKPOINT_MS).unref();
  store.keepReserve();
  const close = async () => {
    running = undefined;
    clearInterval(sweep);
    clearInterval(tidy);
    await feed.close();
    await store.close();
    log('stopped');
  };
  // Feeds never end by themselves, so they go first; answers under way still need the store.
  process.once('feltfoot:stopping', () => void feed.close());
  process.once('sveltekit:shutdown', (_reason: unknown, closing: Promise<void>[] = []) =>
    closing.push(close())
  );
  log('store open', { kind: store.kind });
  return { store, feed };
}

async function sweepOnce(store: Store): Promise<void> {
  try {
    const now = new Date().toISOString();
    const deleted = await store.deleting(() => deleteExpired(store.db, now));
    if (deleted > 0) log('expired', { deleted });
  } catch (error) {
    log('sweep failed', describeError(error));
  }
}
