import type { Lesson } from '$lib/course';

const KEY = 'feltfoot-try-in-hand';

/** Which try of a lesson has its screen open, as long as this tab is. */
export class OpenTry {
  constructor(private readonly store: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>) {}

  /** Null where none is. */
  of({ id }: Pick<Lesson, 'id'>): string | null {
    const [lesson, station] = this.store.getItem(KEY)?.split('/') ?? [];
    return lesson === id ? station : null;
  }

  keep({ id }: Pick<Lesson, 'id'>, station: string | null): void {
    if (station === null) this.store.removeItem(KEY);
    else this.store.setItem(KEY, `${id}/${station}`);
  }
}
