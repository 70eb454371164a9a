import type { TrySession } from './session.svelte';

/** Whether somebody pulled at the picture of the bait, or of the whole line, where the rod was to be taken. */
export class Astray {
  /** Once the rod was taken it is forgotten. */
  is = $state(false);

  /** @param isScreen whether the water has a screen of its own: on a page a finger scrolls past */
  constructor(
    private readonly session: TrySession,
    private readonly isScreen: () => boolean
  ) {
    $effect(() => {
      if (session.phase !== 'ready') this.is = false;
    });
  }

  /** The rod itself, a way that turns it nowhere. */
  readonly pulled = (): void => void (this.is = this.isScreen());

  /** For what holds all the pictures. */
  readonly watch = (place: HTMLElement) => {
    const reach = ({ target }: Event) => {
      if (this.session.phase !== 'ready' || !(target instanceof Element)) return;
      this.is = this.isScreen() && target.closest('figure:not(.rod)') !== null;
    };
    place.addEventListener('pointerdown', reach);
    return () => place.removeEventListener('pointerdown', reach);
  };
}
