/** A reload, or a page that is opened anew, is back by then, ms. */
export const AWAY_MS = 10_000;
/** A room is over by then, ms. */
const FORGOTTEN_MS = 12 * 3_600_000;

/** Seats whose phones no longer follow their room, and since when. */
export class Absent {
  readonly #since = new Map<string, Map<string, number>>();

  /** @param now ms, of a clock that only goes on */
  left(room: string, seat: string, now: number): void {
    const seats = this.#since.get(room) ?? new Map<string, number>();
    this.#since.set(room, seats.set(seat, now));
  }

  /** @returns whether it was away */
  came(room: string, seat: string, now: number): boolean {
    const seats = this.#since.get(room);
    const since = seats?.get(seat);
    seats?.delete(seat);
    if (seats?.size === 0) this.#since.delete(room);
    return since !== undefined && now - since >= AWAY_MS;
  }

  /** Seats that are away now, and not only for a blink. */
  of(room: string, now: number): string[] {
    const seats = [...(this.#since.get(room) ?? [])];
    return seats.flatMap(([seat, since]) => (now - since >= AWAY_MS ? [seat] : []));
  }

  forgetOld(now: number): void {
    for (const [room, seats] of this.#since) {
      for (const [seat, since] of seats) if (now - since > FORGOTTEN_MS) seats.delete(seat);
      if (seats.size === 0) this.#since.delete(room);
    }
  }
}
