import { applyChange, type RecordChange } from '$lib/practice';
import { emptyRecord, type LearnerRecord, type StoredAnswer, type StoredTry } from '$lib/wire';
import { createContext } from 'svelte';
import { StorageKeeping } from './keep-storage';
import { leaveBehind, placeFor, takeLeftBehind } from './left-behind';
import { newId, now } from './stamp';
import type { RecordStore } from './store';

export type Trouble =
  | 'no-storage'
  /** The code that reads the record did not come: no connection, or a new version on the server. */
  | 'not-loaded'
  /** The record is here, and cannot be read now; nothing of it is touched. */
  | 'unread'
  | 'not-saved'
  | 'set-aside'
  /** The same, of the whole record. */
  | 'all-set-aside';

/**
 * The learner's record as every page sees it. A change shows at once and is written behind it, in
 * order; what could not be written is kept in memory and tried again with the next change, and is left
 * behind for the next page if this one goes.
 */
export class Learner {
  record = $state.raw<LearnerRecord>(emptyRecord());
  /** False until the stored record has been read. */
  isReady = $state(false);
  trouble = $state<Trouble | null>(null);

  #store: RecordStore | null = null;
  #unwritten: RecordChange[] = [];
  #queue: Promise<void> = Promise.resolve();
  readonly #keeping = new StorageKeeping(globalThis.navigator?.storage);
  readonly #tabs =
    typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('feltfoot-record');

  readonly #leftBehind: string;
  #hasLeft = false;

  constructor(
    private readonly name = 'feltfoot-record',
    // Its schemas are as much code as a page: they come after the page, not before it.
    private readonly storeCode = () => import('./store')
  ) {
    this.#leftBehind = placeFor(name, newId());
  }

  /** Reads the stored record and follows changes in other tabs. @returns how to stop. */
  open(): () => void {
    this.#tabs?.addEventListener('message', this.#hear);
    addEventListener('pageshow', this.#comeBack);
    addEventListener('online', this.#loadAgain);
    addEventListener('pagehide', this.#leave);
    this.#queue = this.#queue.then(() => this.#openStore());
    return () => {
      this.#tabs?.removeEventListener('message', this.#hear);
      removeEventListener('pageshow', this.#comeBack);
      removeEventListener('online', this.#loadAgain);
      removeEventListener('pagehide', this.#leave);
      this.#tabs?.close();
      void this.#queue.then(() => this.#store?.close());
    };
  }

  change(change: RecordChange): void {
    this.record = applyChange(this.record, change);
    this.#unwritten.push(change);
    this.#queue = this.#queue.then(() => this.#write());
  }

  /** A try made now. @returns it, as it is kept. */
  tried(made: Omit<StoredTry, 'id' | 'at'>): StoredTry {
    const kept = { ...made, id: newId(), at: now() };
    this.change({ kind: 'tried', try: kept });
    return kept;
  }

  /** An answer given now. */
  answered(made: Omit<StoredAnswer, 'id' | 'at'>): void {
    this.change({ kind: 'answered', answer: { ...made, id: newId(), at: now() } });
  }

  /** Resolves when all changes so far have been written, or have failed to be. */
  settled(): Promise<void> {
    return this.#queue;
  }

  async #openStore(): Promise<void> {
    let ifItFails: Trouble = 'not-loaded';
    try {
      const { RecordStore } = await this.storeCode();
      ifItFails = 'no-storage';
      const store = await RecordStore.open(this.name);
      ifItFails = 'unread';
      await this.#load(store);
      this.#store = store;
      const leftBehind = RecordStore.readable(this.record, takeLeftBehind(this.name), now());
      for (const change of leftBehind) this.change(change);
    } catch (error) {
      this.trouble = isOfNewerVersion(error) ? 'unread' : ifItFails;
    }
    this.isReady = true;
  }

  /** What is stored, and on top of it what has not been written yet. */
  async #load(store: RecordStore): Promise<void> {
    const at = now();
    const stored = await store.load(at);
    this.record = this.#unwritten.reduce(applyChange, stored);
    const aside = stored.setAside.filter((one) => one.at === at);
    const isAll = aside.some(({ what }) => what === 'document');
    if (aside.length > 0) this.trouble = isAll ? 'all-set-aside' : 'set-aside';
    else if (this.trouble === 'not-loaded') this.trouble = null;
  }

  async #write(): Promise<void> {
    if (this.trouble === 'not-loaded') await this.#openStore();
    const changes = [...this.#unwritten];
    if (!this.#store || changes.length === 0) return;
    try {
      await this.#store.write(changes);
      this.#unwritten = this.#unwritten.slice(changes.length);
      this.trouble = null;
      if (this.#hasLeft) this.#leave();
      void this.#keeping.keep(this.record);
      for (const change of changes) this.#tabs?.postMessage(change);
    } catch {
      this.trouble = 'not-saved';
    }
  }

  readonly #hear = ({ data }: MessageEvent<RecordChange>): void => {
    this.record = applyChange(this.record, data);
  };

  readonly #leave = (): void => {
    leaveBehind(this.#leftBehind, this.#unwritten);
    this.#hasLeft = this.#unwritten.length > 0;
  };

  readonly #loadAgain = (): void => {
    this.#queue = this.#queue.then(() => this.#write());
  };

  /** A page that comes back from the browser's back-forward cache has heard nothing meanwhile. */
  readonly #comeBack = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) this.#queue = this.#queue.then(() => this.#openStore());
  };
}

const isOfNewerVersion = (error: unknown) =>
  error instanceof DOMException && error.name === 'VersionError';

export const [useLearner, provideLearner] = createContext<Learner>();
