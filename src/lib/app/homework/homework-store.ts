import * as v from 'valibot';
import {
  type Assignment,
  type HomeworkSubmission,
  homeworkSubmission,
  storedAssignment
} from '$lib/wire';
import type { OutboxEntry } from '$lib/connection';
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** Homework as this phone has it, to be opened offline too. */
export interface KeptHomework {
  /** The secret of the link. */
  share: string;
  /** This phone's own secret, made here: who has it is this client. */
  token: string;
  name: string;
  /** What the server last said; null before the first answer. */
  told: TaskView | null;
  /** When it was last opened, so that it comes first. */
  opened: string;
}

/** What the guide asks and says, as it was last heard. */
export interface TaskView extends Assignment {
  isClosed: boolean;
  /** What the guide wrote back. */
  answer: string;
}

/** Something done here for the homework of this link. */
export interface HomeworkEntry extends OutboxEntry<HomeworkSubmission> {
  share: string;
}

interface Tables extends DBSchema {
  homes: { key: string; value: KeptHomework };
  parcels: { key: string; value: HomeworkEntry & { id: string }; indexes: { share: string } };
}

/** What this browser keeps of homework, in IndexedDB. */
export class HomeworkStore {
  private constructor(private readonly db: IDBPDatabase<Tables>) {}

  static async open(): Promise<HomeworkStore> {
    const db = await openDB<Tables>('feltfoot-homework', 1, {
      upgrade(fresh) {
        fresh.createObjectStore('homes', { keyPath: 'share' });
        fresh.createObjectStore('parcels', { keyPath: 'id' }).createIndex('share', 'share');
      }
    });
    return new HomeworkStore(db);
  }

  /** Last opened first. */
  async homes(): Promise<KeptHomework[]> {
    const all = await this.db.getAll('homes');
    return all.map(asNow).sort((a, b) => (a.opened > b.opened ? -1 : 1));
  }

  async keepHome(home: KeptHomework): Promise<void> {
    await this.db.put('homes', home);
  }

  /** In the order in which they were made. */
  async entries(share: string): Promise<HomeworkEntry[]> {
    const all = await this.db.getAllFromIndex('parcels', 'share', share);
    return all.map(readable).sort((a, b) => (a.sent.at < b.sent.at ? -1 : 1));
  }

  async keepEntry(entry: HomeworkEntry): Promise<void> {
    await this.db.put('parcels', { ...entry, id: entry.sent.id });
  }

  async forget(share: string): Promise<void> {
    const ids = await this.db.getAllKeysFromIndex('parcels', 'share', share);
    await Promise.all(ids.map((id) => this.db.delete('parcels', id)));
    await this.db.delete('homes', share);
  }

  close(): void {
    this.db.close();
  }
}

/** What can no longer be read is set aside: it is kept, never sent, and its owner is told. */
function readable(entry: HomeworkEntry): HomeworkEntry {
  if (entry.state === 'refused' || v.is(homeworkSubmission, entry.sent)) return entry;
  return { ...entry, state: 'refused', why: 'It can no longer be read, and is set aside.' };
}

/** What was told by an earlier version is read as it is now; what cannot be is asked for again. */
function asNow(home: KeptHomework): KeptHomework {
  if (!home.told) return home;
  const { isClosed, answer, ...task } = home.told;
  const read = v.safeParse(storedAssignment, task);
  return { ...home, told: read.success ? { ...read.output, isClosed, answer } : null };
}
