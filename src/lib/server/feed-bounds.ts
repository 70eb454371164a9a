import type { Listener } from './audience';
import { Refusal } from './faults';

/** A phone's feed, and the dead one that it left when it slept or a second page of it. */
const FEEDS_A_SEAT = 2;
/** Screens of one room, and as many phones that have no seat yet or any more. */
const SPARE = 50;
/** From one address: a hall of two thousand phones, each with a dead feed, and half as many again. */
const MOST_FROM_ADDRESS = 6000;
/** Every heartbeat ends what is dead, s. */
const RETRY_AFTER_S = 15;

/**
 * Looks whether a room has a place for one more. Nobody takes another seat's place, so that who fills
 * a room with feeds keeps no phone from its own.
 * @param alike who listens to that room with the same key and seat, oldest first
 * @returns the same seat's older feeds, which make way
 */
export function makingWay(alike: readonly Listener[], seat: string | null): Listener[] {
  if (seat !== null) return alike.slice(0, Math.max(0, alike.length + 1 - FEEDS_A_SEAT));
  if (alike.length < SPARE) return [];
  throw full('Too many people are watching this clinic.');
}

/** The feeds that each address has at this node. */
export class Addresses {
  readonly #feeds = new Map<string, Set<Listener>>();

  /** Refuses when the address has all that it may have. */
  check(address: string): void {
    const has = this.#feeds.get(address)?.size ?? 0;
    if (has >= MOST_FROM_ADDRESS) throw full('Too many people are watching clinics from here.');
  }

  add(listener: Listener): void {
    const feeds = this.#feeds.get(listener.from) ?? new Set();
    this.#feeds.set(listener.from, feeds.add(listener));
  }

  /** Deleted twice, it is gone once. */
  delete(listener: Listener): void {
    const feeds = this.#feeds.get(listener.from);
    feeds?.delete(listener);
    if (feeds?.size === 0) this.#feeds.delete(listener.from);
  }

  clear(): void {
    this.#feeds.clear();
  }
}

const full = (says: string) => new Refusal(503, `${says} Try again soon.`, RETRY_AFTER_S);
