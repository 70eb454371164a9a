import { rulerOf, type Ruler } from '$lib/practice';
import type { StoredTry } from '$lib/wire';
import { followMarks } from './follow-marks';

/** The hand's ruler for a page that only reads it: null until there are tries enough. */
export class RulerNow {
  ruler = $state.raw<Ruler | null>(null);
  isReading = $state(true);

  /** For a sheet, which has room for one correction: null too where the hand needs one for each distance. */
  get oneForAll(): Ruler | null {
    return this.ruler?.differsByDistance ? null : this.ruler;
  }

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    return followMarks(tries, ({ marks, isAll }) => {
      this.isReading = !isAll;
      if (isAll) this.ruler = rulerOf(marks);
    });
  }
}
