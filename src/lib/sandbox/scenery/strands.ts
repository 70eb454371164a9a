import { GRAVITY_M_S2 } from '$lib/model/units';

/**
 * Skirt and trailer: soft strands tied to the head's back. Each is a chain of links in still water.
 * Water holds a node where it is, the link before it draws it along, bending brings it back to the
 * pose it was moulded in, and its weight in water lets it sink or rise. Its inertia is left out: a
 * millimetre of rubber stops within a few millimetres of water.
 */
export interface Strand {
  readonly length_m: number;
  readonly thickness_m: number;
  /** Slope of its first link at rest, rad: positive is up. */
  readonly fan_rad: number;
  readonly density_kg_m3: number;
  readonly youngs_modulus_Pa: number;
}

export const LINKS = 5;

/** Common rubbers: silicone for the skirt, a soft plastic that just floats for the trailer. A choice. */
const SILICONE = {
  length_m: 0.055,
  thickness_m: 1e-3,
  density_kg_m3: 1100,
  youngs_modulus_Pa: 1e6
};
const PLASTIC = { length_m: 0.07, thickness_m: 3e-3, density_kg_m3: 970, youngs_modulus_Pa: 3e5 };

export const STRANDS: readonly Strand[] = [
  ...[-0.35, 0, 0.3, 0.6, 0.9, 1.2].map((fan_rad) => ({ ...SILICONE, fan_rad })),
  ...[0.05, 0.45].map((fan_rad) => ({ ...PLASTIC, fan_rad }))
];
/** The first of the strands that are the trailer's. */
export const TRAILER = 6;

const WATER_KG_M3 = 1000;
/** Drag of a cylinder across the flow at Reynolds numbers of tens to hundreds. */
const DRAG = 1.5;
/** Speed at which the drag is taken to be in proportion to speed, m/s: that of a quiet drag. */
const QUIET_M_S = 0.1;

/**
 * How long a strand takes to bend back, s: ζL⁴/(12.4 EI), the slowest mode of a cantilever in a fluid
 * that resists by ζ a metre (12.4 = 1.875⁴; any text on vibrations).
 */
export function returnTime(strand: Strand): number {
  const { length_m, thickness_m, youngs_modulus_Pa } = strand;
  const resistance = 0.5 * WATER_KG_M3 * DRAG * thickness_m * QUIET_M_S;
  const stiffness = (youngs_modulus_Pa * Math.PI * thickness_m ** 4) / 64;
  return (resistance * length_m ** 4) / (12.4 * stiffness);
}

/** How fast a loose strand sinks lying level, m/s; negative rises. */
export function sinkSpeed({ thickness_m, density_kg_m3 }: Strand): number {
  const excess = density_kg_m3 - WATER_KG_M3;
  const square = (Math.abs(excess) * GRAVITY_M_S2 * Math.PI * thickness_m) / 2;
  return Math.sign(excess) * Math.sqrt(square / (WATER_KG_M3 * DRAG));
}

/** A node keeps this clear of the bottom, m. */
const CLEAR_M = 1e-3;

interface Chain {
  readonly link_m: number;
  readonly return_s: number;
  readonly sink_m_s: number;
  /** Nodes at rest, from the bait's lowest point, m: root first. */
  readonly rest: readonly { x: number; z: number }[];
}

/** Where the bait is, m: its lowest point. */
export interface BaitPlace {
  readonly x_m: number;
  readonly z_m: number;
}

/** All strands of one jig. */
export class Strands {
  /** Offsets from the bait's lowest point, m: x and z of each node of each strand, root first. */
  readonly offsets = new Float64Array(STRANDS.length * (LINKS + 1) * 2);
  private readonly chains: readonly Chain[];

  /** `away`: sign of x away from the angler, where skirts trail. */
  constructor(
    radius_m: number,
    away: number,
    private readonly heightAt: (x_m: number) => number
  ) {
    this.chains = STRANDS.map((strand) => chainOf(strand, radius_m, away));
  }

  /** Lays every strand as it rests under a bait at `place`. */
  settle(place: BaitPlace): void {
    this.eachNode((chain, j, at) => {
      this.offsets[at] = chain.rest[j].x;
      this.offsets[at + 1] = chain.rest[j].z;
      this.lift(at, place);
    });
  }

  /** The bait went from one place to the other in `step_s`. Returns how far a node moved at most, m. */
  step(from: BaitPlace, to: BaitPlace, step_s: number): number {
    const { offsets } = this;
    let most = 0;
    this.eachNode((chain, j, at) => {
      const { x, z } = chain.rest[j];
      const wasX = offsets[at];
      const wasZ = offsets[at + 1];
      if (j === 0) {
        offsets[at] = x;
        offsets[at + 1] = z;
        return;
      }
      const back = 1 - Math.exp(-step_s / (chain.return_s * (j / LINKS) ** 2));
      const keptX = wasX - (to.x_m - from.x_m);
      const keptZ = wasZ - (to.z_m - from.z_m) - chain.sink_m_s * step_s;
      offsets[at] = keptX + back * (x - keptX);
      offsets[at + 1] = keptZ + back * (z - keptZ);
      this.tie(at, chain.link_m);
      this.lift(at, to);
      most = Math.max(most, Math.hypot(offsets[at] - wasX, offsets[at + 1] - wasZ));
    });
    return most;
  }

  private eachNode(visit: (chain: Chain, j: number, at: number) => void): void {
    this.chains.forEach((chain, i) => {
      for (let j = 0; j <= LINKS; j++) visit(chain, j, 2 * (i * (LINKS + 1) + j));
    });
  }

  /** A link keeps its length. */
  private tie(at: number, link_m: number): void {
    const { offsets } = this;
    const dx = offsets[at] - offsets[at - 2];
    const dz = offsets[at + 1] - offsets[at - 1];
    const share = link_m / Math.max(Math.hypot(dx, dz), 1e-9);
    offsets[at] = offsets[at - 2] + share * dx;
    offsets[at + 1] = offsets[at - 1] + share * dz;
  }

  private lift(at: number, { x_m, z_m }: BaitPlace): void {
    const lowest = this.heightAt(x_m + this.offsets[at]) + CLEAR_M - z_m;
    if (this.offsets[at + 1] < lowest) this.offsets[at + 1] = lowest;
  }
}

function chainOf(strand: Strand, radius_m: number, away: number): Chain {
  const link_m = strand.length_m / LINKS;
  const rest = [{ x: away * radius_m * 0.7, z: radius_m * (1 + 0.5 * Math.sin(strand.fan_rad)) }];
  for (let j = 0; j < LINKS; j++) {
    // A skirt flares where it is tied and hangs level farther out.
    const slope = strand.fan_rad * (1 - (0.6 * j) / LINKS);
    const { x, z } = rest[j];
    rest.push({ x: x + away * link_m * Math.cos(slope), z: z + link_m * Math.sin(slope) });
  }
  return { link_m, return_s: returnTime(strand), sink_m_s: sinkSpeed(strand), rest };
}
