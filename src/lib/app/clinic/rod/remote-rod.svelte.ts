import { ask, Refused, wordsFor } from '$lib/connection';
import { newId } from '$lib/learner';
import { BATCH_MS, RodSender } from './rod-sender';
import { type RodPlace, rodPlace } from '$lib/wire';

/** The rod of the big screen, moved from this phone. */
export class RemoteRod {
  /** As of a session at one's own rod: ready at its start, or moving. */
  phase = $state<'ready' | 'moving'>('ready');
  turned_deg = $state(0);
  place = $state.raw<RodPlace | null>(null);
  trouble = $state('');
  readonly #sender: RodSender;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(link: string) {
    this.#sender = new RodSender(
      newId(),
      (batch) => ask('POST', '/api/clinic/rod', { link, ...batch }, rodPlace),
      (place) => this.#told(place),
      (error) => this.#failed(error)
    );
  }

  /** @returns how to stop */
  open(): () => void {
    this.#timer = setInterval(() => void this.#sender.tick(), BATCH_MS);
    return () => clearInterval(this.#timer);
  }

  tilt(t_ms: number, turned_deg: number): void {
    this.phase = 'moving';
    this.turned_deg = turned_deg;
    this.#sender.turn(t_ms, turned_deg);
  }

  again(): void {
    this.phase = 'ready';
    this.turned_deg = 0;
    this.#sender.tryAgain();
  }

  /** Kept as it is while it says the same, so that the way to level is not lost. */
  #told(place: RodPlace): void {
    this.trouble = '';
    if (JSON.stringify(place) !== JSON.stringify(this.place)) this.place = place;
  }

  #failed(error: unknown): void {
    this.trouble = wordsFor(error);
    if (!(error instanceof Refused) || error.status !== 404) return;
    this.place = null;
    clearInterval(this.#timer);
  }
}
