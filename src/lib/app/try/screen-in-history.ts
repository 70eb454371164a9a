/**
 * A screen laid over its page, or a sheet over that, is a step of the browser's history: Back puts it away
 * and stays on what it lay over. The mark lies beside the router's own, which so takes the step for the
 * page's and does nothing; unlike what the router keeps for a page, it is known again after a reload.
 */
class Layer {
  /** A step back that was asked for and is not made yet. */
  static #leaving: Promise<unknown> = Promise.resolve();

  constructor(private readonly mark: string) {}

  get #here(): unknown {
    return (history.state as Record<string, unknown> | null)?.[this.mark];
  }

  /** Whether the step that the browser is at has this one open. */
  isAt(name: string): boolean {
    return this.#here === name;
  }

  /** One step for whichever is open: a second takes the place of the first. */
  async stepTo(name: string): Promise<void> {
    await Layer.#leaving;
    if (this.isAt(name)) return;
    const step = { ...(history.state as object | null), [this.mark]: name };
    if (this.#here === undefined) history.pushState(step, '');
    else history.replaceState(step, '');
  }

  /** Back to what it lies over, unless that was done already; resolves when it is made: another page can be gone to. */
  leave(name: string): Promise<unknown> {
    if (!this.isAt(name)) return Layer.#leaving;
    // From now on the step is the page's: loaded again before it is made, nothing is open.
    history.replaceState({ ...(history.state as object), [this.mark]: undefined }, '');
    Layer.#leaving = new Promise((made) => addEventListener('popstate', made, { once: true }));
    history.back();
    return Layer.#leaving;
  }
}

export const screens = new Layer('feltfoot-screen');
export const sheets = new Layer('feltfoot-sheet');
