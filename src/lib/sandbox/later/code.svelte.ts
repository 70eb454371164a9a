import { nextTurn } from '../in-turns';
import type * as Parts from './parts';

/**
 * The code of all that has water in it: model, drawing and rod, as much as the rest of a page twice
 * over. It comes when water nears the window or is asked for, not before the page can be read.
 */
class WaterCode {
  parts = $state.raw<typeof Parts | null>(null);
  /** It did not come: no connection, or a newer version has taken its place. */
  isMissing = $state(false);
  #coming: Promise<void> | null = null;

  /** Resolves when it is here, or is known not to come; asked again, it is tried again. */
  fetch = (): Promise<void> => (this.#coming ??= this.#get());

  async #get(): Promise<void> {
    this.isMissing = false;
    try {
      const parts = await import('./parts');
      // It has been run in this task: what it puts up has the next.
      await nextTurn();
      this.parts = parts;
    } catch {
      this.isMissing = true;
      this.#coming = null;
    }
  }
}

export const waterCode = new WaterCode();
