import type { Line } from './line';
import type { Setup } from './scenario';

/** Where a line gives way: in itself, at the knot that ties the leader on, at the bait's knot. */
export type BreakPlace = 'line' | 'leader knot' | 'bait';

/** Holds `load_N`. Its pull is greatest at one of its ends, the pieces `ends`; `parts` gives way, or that end if null. */
interface Link {
  readonly at: BreakPlace;
  readonly load_N: number;
  readonly ends: readonly number[];
  readonly parts: number | null;
}

/** What gave way: piece `piece` pulls no more. */
export interface Parted {
  readonly at: BreakPlace;
  readonly piece: number;
}

/**
 * What a line and its knots hold. Without a leader the bait's knot is the weak place. With one there are
 * three: the line above the knot, the knot with a share of the weaker of what it joins, and the leader's own
 * knot at the bait. The one that is pulled beyond its load by most gives way; the pull of each is its own, so a
 * line heavy enough to pull more at the tip than at the knot may part first.
 */
export class Strength {
  private readonly links: readonly Link[];

  constructor({ breaking_load_N = Infinity, leader }: Setup['line'], line: Line) {
    const last = line.segments - 1;
    const { knotPiece } = line;
    const links: Link[] = [];
    if (!leader || knotPiece === null) {
      links.push({ at: 'bait', load_N: breaking_load_N, ends: [0, last], parts: last });
    } else {
      const ofLeader_N = leader.breaking_load_N ?? Infinity;
      const knot_N = (leader.knot_strength ?? Infinity) * Math.min(breaking_load_N, ofLeader_N);
      // A line shorter than its leader has none of its own outside the tip.
      const above = knotPiece > 0 ? [0, knotPiece - 1] : [];
      links.push(
        { at: 'line', load_N: breaking_load_N, ends: above, parts: null },
        { at: 'leader knot', load_N: knot_N, ends: [knotPiece], parts: knotPiece },
        { at: 'bait', load_N: ofLeader_N, ends: [knotPiece, last], parts: last }
      );
    }
    this.links = links.filter(({ load_N }) => load_N < Infinity);
  }

  /** What gives way under these pulls by piece, N; null where all holds. */
  parting(pullAt: (piece: number) => number): Parted | null {
    let parted: Parted | null = null;
    let worst = 1;
    for (const { at, load_N, ends, parts } of this.links) {
      for (const end of ends) {
        const share = pullAt(end) / load_N;
        if (share <= worst) continue;
        worst = share;
        parted = { at, piece: parts ?? end };
      }
    }
    return parted;
  }
}
