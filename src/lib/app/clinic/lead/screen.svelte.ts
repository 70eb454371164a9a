import * as v from 'valibot';
import { ask, wordsFor } from '$lib/connection';
import { followFeed } from '../follow';
import {
  type ClinicAction,
  made,
  type RodBatch,
  rodBatch,
  type ScreenView,
  screenView,
  type SilentCrowd
} from '$lib/wire';

/** A key that was made void opens nothing more, however long the screen asks. */
const SHUT = [401, 404];

/** A clinic as its big screen has it: what the server says of it, and what the instructor does. */
export class Screen {
  heard = $state.raw<ScreenView | null>(null);
  isConnected = $state(true);
  /** Whether the key that opened this clinic opens it no more. */
  isShut = $state(false);
  fault = $state('');
  /** The rod's link, known to the screen that made it until a phone has the rod. */
  rodLink = $state<string | null>(null);
  /** Hears how a phone moves the room's rod. */
  onrod: (batch: RodBatch) => void = () => {};

  readonly #address: string;

  constructor(id: string) {
    this.#address = `/api/guide/clinic/${id}`;
  }

  /** Listens to the clinic. @returns how to stop. */
  open(): () => void {
    return followFeed(
      `${this.#address}/feed`,
      screenView,
      (next) => (this.heard = next),
      (is) => this.#connected(is),
      { rod: (data) => this.#rod(data) }
    );
  }

  act(action: ClinicAction): Promise<void> {
    return this.#attempt(() => ask('POST', this.#address, action));
  }

  setAdmission(door: 'open' | 'closed'): Promise<void> {
    return this.#attempt(() => ask('POST', `${this.#address}/door`, { door }));
  }

  /** @param crowd only these */
  clearSilent(crowd?: SilentCrowd): Promise<void> {
    const which = crowd ? `?group=${crowd.group}&minute=${crowd.minute}` : '';
    return this.#attempt(() => ask('DELETE', `${this.#address}/silent${which}`));
  }

  lendRod(): Promise<void> {
    return this.#attempt(async () => {
      const { link } = await ask('POST', `${this.#address}/rod`, undefined, made.link);
      this.rodLink = link;
    });
  }

  putRodAway(): Promise<void> {
    return this.#attempt(async () => {
      await ask('DELETE', `${this.#address}/rod`);
      this.rodLink = null;
    });
  }

  async #attempt(work: () => Promise<unknown>): Promise<void> {
    try {
      await work();
      this.fault = '';
    } catch (error) {
      this.fault = wordsFor(error);
    }
  }

  #rod(data: unknown): void {
    const batch = v.safeParse(rodBatch, data);
    this.rodLink = null;
    if (batch.success) this.onrod(batch.output);
  }

  #connected(is: boolean): void {
    this.isConnected = is;
    if (is) this.isShut = false;
    else void this.#lookIfShut();
  }

  async #lookIfShut(): Promise<void> {
    const asking = new AbortController();
    try {
      const { status } = await fetch(`${this.#address}/feed`, { signal: asking.signal });
      this.isShut = SHUT.includes(status);
    } catch {
      // There is no connection, which is said already.
    } finally {
      asking.abort();
    }
  }
}
