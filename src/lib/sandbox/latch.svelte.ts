import { isLatchKept, keepLatch } from './press-setting';
import type { TrySession } from './session.svelte';

/** What is turned while a button is held, or from one press to the next. */
export type Turned = 'rod' | 'fast' | 'reel';
type Direction = -1 | 0 | 1;

const NONE: Record<Turned, Direction> = { rod: 0, fast: 0, reel: 0 };

/** Whether a press starts what the next one stops, instead of holding; kept for the next visit. */
export class Latch {
  isOn = $state(false);
  /** Which way each was sent by a press that no other has ended. */
  going = $state.raw(NONE);

  constructor(private readonly session: TrySession) {}

  /** As it was kept. */
  recall(storage: Storage): void {
    this.isOn = isLatchKept(storage);
  }

  set(to: boolean, storage: Storage): void {
    this.session.letGo();
    this.isOn = to;
    keepLatch(storage, to);
  }

  /** Nothing goes on by itself any more. */
  rest(): void {
    this.going = NONE;
  }

  turn(what: Turned, t_ms: number, direction: Direction): void {
    if (what === 'reel') this.session.reel(t_ms, direction);
    else this.session.turn(t_ms, direction, what === 'fast');
    if (!this.isOn) return;
    // The rod goes one way at a time.
    const before = what === 'reel' ? this.going : { ...NONE, reel: this.going.reel };
    this.going = { ...before, [what]: direction };
  }
}
