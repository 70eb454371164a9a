import { applyChange, type RecordChange } from '$lib/practice';
import {
  type ClubSession,
  emptyRecord,
  readDocument,
  RecordError,
  toDocument,
  type LearnerRecord,
  type RecordDocument,
  type StoredTry,
  type TestSession
} from '$lib/wire';
import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';

type StoredNotes = Omit<RecordDocument, 'tries' | 'sessions' | 'club'>;

interface Tables extends DBSchema {
  /** One entry, the record without what is stored one by one. */
  notes: { key: 'notes'; value: StoredNotes };
  tries: { key: string; value: StoredTry };
  sessions: { key: string; value: TestSession };
  club: { key: string; value: ClubSession };
}
const TABLES = ['notes', 'tries', 'sessions', 'club'] as const;
type TableName = (typeof TABLES)[number];
type Transaction = IDBPTransaction<Tables, TableName[], 'readwrite'>;

/** 2 added the sessions, 3 those of a club. */
const TABLES_VERSION = 3;

/**
 * The record in this browser's IndexedDB. Every write is one transaction on what is stored at that
 * moment, so two tabs never overwrite each other's work with an old copy.
 */
export class RecordStore {
  private constructor(private readonly db: IDBPDatabase<Tables>) {}

  /** Rejects where the browser keeps nothing, as some do in private windows. */
  static async open(name: string): Promise<RecordStore> {
    const db = await openDB<Tables>(name, TABLES_VERSION, {
      upgrade(tables, before) {
        if (before < 1) {
          tables.createObjectStore('notes');
          tables.createObjectStore('tries', { keyPath: 'id' });
        }
        if (before < 2) tables.createObjectStore('sessions', { keyPath: 'id' });
        tables.createObjectStore('club', { keyPath: 'session.id' });
      }
    });
    // Deleting the site's data in another tab must not hang on this one.
    db.addEventListener('versionchange', () => db.close());
    return new RecordStore(db);
  }

  /** What is stored; parts that cannot be read are moved to `setAside` for good. */
  load(at: string): Promise<LearnerRecord> {
    return this.inOneGo(async (transaction) => {
      const notes = await transaction.objectStore('notes').get('notes');
      if (!notes) return emptyRecord();
      const tries = await transaction.objectStore('tries').getAll();
      const sessions = await transaction.objectStore('sessions').getAll();
      const club = await transaction.objectStore('club').getAll();
      const record = read({ ...notes, tries: [...tries].sort(byTime), sessions, club }, at);
      if (record.setAside.length !== notes.setAside?.length) await replace(transaction, record);
      return record;
    });
  }

  /** Of what a page left behind, that which leaves a record as it may be. */
  static readable(record: LearnerRecord, found: readonly unknown[], at: string): RecordChange[] {
    return found.filter((one): one is RecordChange => isReadable(record, one, at));
  }

  /** Resolves when the changes are safe on the disk. Rejects when none of them is. */
  write(changes: readonly RecordChange[]): Promise<void> {
    return this.inOneGo(async (transaction) => {
      const notes = await transaction.objectStore('notes').get('notes');
      const before = notes ? withoutTag(notes) : emptyRecord();
      const erased = changes.some(({ kind }) => kind === 'erased');
      if (erased) await transaction.objectStore('tries').clear();
      const [own, others] = [transaction.objectStore('sessions'), transaction.objectStore('club')];
      const sessions = changes.some(isAbout('session')) ? await own.getAll() : [];
      const club = changes.some(isAbout('club')) ? await others.getAll() : [];
      const after = changes.reduce(applyChange, { ...before, sessions, club });
      await add(transaction, after);
      for (const { id } of sessions) {
        if (!after.sessions.some((one) => one.id === id)) await own.delete(id);
      }
      for (const {
        session: { id }
      } of club) {
        if (!after.club.some((one) => one.session.id === id)) await others.delete(id);
      }
    });
  }

  close(): void {
    this.db.close();
  }

  /** Does all of the work or, when any of it fails, nothing. */
  private async inOneGo<T>(work: (transaction: Transaction) => Promise<T>): Promise<T> {
    const transaction = this.db.transaction([...TABLES], 'readwrite', { durability: 'strict' });
    // Its failure is that of the work, which is told below.
    const done = transaction.done.then(
      () => true,
      () => false
    );
    try {
      const result = await work(transaction);
      if (await done) return result;
    } catch (error) {
      if (!transaction.error) transaction.abort();
      throw error;
    }
    throw transaction.error ?? new Error('The browser gave up the writing.');
  }
}

function read(document: unknown, at: string): LearnerRecord {
  try {
    return readDocument(document, at);
  } catch (error) {
    if (!(error instanceof RecordError)) throw error;
    const aside = { what: 'document', why: error.message, at, value: document };
    return { ...emptyRecord(), setAside: [aside] };
  }
}

function isReadable(record: LearnerRecord, change: unknown, at: string): boolean {
  try {
    // None, of a kind that there is not.
    const after: LearnerRecord | undefined = applyChange(record, change as RecordChange);
    if (!after) return false;
    return readDocument(toDocument(after), at).setAside.length === record.setAside.length;
  } catch {
    return false;
  }
}

async function replace(transaction: Transaction, record: LearnerRecord): Promise<void> {
  await transaction.objectStore('tries').clear();
  await transaction.objectStore('sessions').clear();
  await transaction.objectStore('club').clear();
  await add(transaction, record);
}

/** Changes that leave the sessions alone need not read them. */
const isAbout =
  (what: 'session' | 'club') =>
  ({ kind }: RecordChange) =>
    kind.startsWith(what) || kind === 'imported' || kind === 'erased';

/** Writes the notes, the sessions there are, own and a club's, and those tries that are not stored yet. */
async function add(transaction: Transaction, record: LearnerRecord): Promise<void> {
  const { tries, sessions, club, ...notes } = toDocument(record);
  await transaction.objectStore('notes').put(notes, 'notes');
  for (const one of sessions) await transaction.objectStore('sessions').put(one);
  for (const one of club) await transaction.objectStore('club').put(one);
  const stored = transaction.objectStore('tries');
  for (const made of tries) {
    if ((await stored.getKey(made.id)) === undefined) await stored.put(made);
  }
}

type Later = 'answers' | 'outfits' | 'plans' | 'entries' | 'draft';

/** Notes of version 1 have no answers, those of 2 no outfits, of 3 no plans and no log, of 5 no draft. */
function withoutTag(notes: Omit<StoredNotes, Later> & Partial<Pick<StoredNotes, Later>>) {
  const { settings, predictions, progress, setAside } = notes;
  const { answers = [], outfits = [], plans = [], entries = [], draft = null } = notes;
  const own = { answers, outfits, plans, entries, draft };
  return { settings, predictions, progress, setAside, ...own, tries: [], sessions: [], club: [] };
}

function byTime(a: StoredTry, b: StoredTry): number {
  return a.at < b.at ? -1 : 1;
}
