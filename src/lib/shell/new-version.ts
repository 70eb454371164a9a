/**
 * A new version of the app installs itself beside the running one and waits. It takes over only
 * between two pages, so that no try in progress is lost, and every page then runs on files of one
 * version.
 */
export class NewVersion {
  #waiting: ServiceWorker | undefined;

  /** On opening a page nothing has been begun yet, so a version that is ready may start at once. */
  async watch(): Promise<void> {
    if (!('serviceWorker' in navigator)) return;
    const registration = await navigator.serviceWorker.ready;
    this.#waiting = registration.waiting ?? undefined;
    this.takeOver(location.href);
    registration.addEventListener('updatefound', () => {
      const installing = registration.installing;
      installing?.addEventListener('statechange', () => {
        if (installing.state === 'installed') this.#waiting = registration.waiting ?? undefined;
      });
    });
  }

  /**
   * Lets the waiting version, if there is one, take over and load this address afresh.
   * @returns whether it does
   */
  takeOver(address: string): boolean {
    const waiting = this.#waiting;
    if (!waiting) return false;
    this.#waiting = undefined;
    const go = () => location.assign(address);
    navigator.serviceWorker.addEventListener('controllerchange', go, { once: true });
    waiting.postMessage('take over');
    return true;
  }
}
