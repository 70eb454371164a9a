const KEY = 'feltfoot-own-marks';

/** Marks of the tries made since a sent one was opened, as long as this tab is. */
export class OwnMarks {
  constructor(
    private readonly store: Pick<Storage, 'getItem' | 'setItem'>,
    /** The link that was opened. */
    private readonly link: string
  ) {}

  get all(): readonly number[] {
    const { link, marks } = JSON.parse(this.store.getItem(KEY) ?? '{}') as Partial<Kept>;
    return link === this.link && marks ? marks : [];
  }

  add(marks: number): void {
    const kept: Kept = { link: this.link, marks: [...this.all, marks] };
    this.store.setItem(KEY, JSON.stringify(kept));
  }
}

interface Kept {
  readonly link: string;
  readonly marks: readonly number[];
}
