import * as v from 'valibot';
import { type Assignment, type HomeworkSubmission, storedAssignment } from '$lib/wire';
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** Homework as this phone has it, to be opened offline too. */
export interface Home {
  /** The secret of the link. */
  share: string;
  /** This phone's own secret, made here: who has it is this client. */
  token: string;
  name: string;
  /** What the server last said; null before the first answer. */
  told: Told | null;
  /** When it was last opened, so that it comes first. */
  opened: string;
}

/** What the guide asks and says, as it was last heard. */
export interface Told extends Assignment {
  isClosed: boolean;
  /** What the guide wrote back. */
  answer: string;
}

/** Something done here. It waits until the server has acknowledged it. */
export interface Parcel {
  share: string;
  sent: HomeworkSubmission;
  state: 'waiting' | 'taken' | 'refused';
  why?: string;
}

interface Tables extends DBSchema {
  homes: { key: string; value: Home };
  parcels: { key: string; value: Parcel & { id: string }; indexes: { share: string } };
}

/** What this browser keeps of homework, in IndexedDB. */
export class Shelf {
  private constructor(private readonly db: IDBPDatabase<Tables>) {}

  static async open(): Promise<Shelf> {
    const db = await openDB<Tables>('feltfoot-homework', 1, {
      upgrade(fresh) {
        fresh.createObjectStore('homes', { keyPath: 'share' });
        fresh.createObjectStore('parcels', { keyPath: 'id' }).createIndex('share', 'share');
      }
    });
    return new Shelf(db);
  }

  /** Last opened first. */
  async homes(): Promise<Home[]> {
    const all = await this.db.getAll('homes');
    return all.map(asNow).sort((a, b) => (a.opened > b.opened ? -1 : 1));
  }

  async keepHome(home: Home): Promise<void> {
    await this.db.put('homes', home);
  }

  /** In the order in which they were made. */
  async parcels(share: string): Promise<Parcel[]> {
    const all = await this.db.getAllFromIndex('parcels', 'share', share);
    return all.sort((a, b) => (a.sent.at < b.sent.at ? -1 : 1));
  }

  async keepParcel(parcel: Parcel): Promise<void> {
    await this.db.put('parcels', { ...parcel, id: parcel.sent.id });
  }

  async forget(share: string): Promise<void> {
    const parcels = await this.parcels(share);
    await Promise.all(parcels.map(({ sent }) => this.db.delete('parcels', sent.id)));
    await this.db.delete('homes', share);
  }

  close(): void {
    this.db.close();
  }
}

/** What was told by an earlier version is read as it is now; what cannot be is asked for again. */
function asNow(home: Home): Home {
  if (!home.told) return home;
  const { isClosed, answer, ...task } = home.told;
  const read = v.safeParse(storedAssignment, task);
  return { ...home, told: read.success ? { ...read.output, isClosed, answer } : null };
}
