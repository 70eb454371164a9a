import { seededRandom, TICK_S } from '$lib/model';
import { GRAVITY_M_S2 } from '$lib/model/units';
import type { Backdrop } from '../stage';
import { LooseSolids, type RoundSolid } from './loose-solids';
import type { BaitPlace } from './strands';

/** Loose pebbles on gravel that a bait knocks aside: to look at, the model knows nothing of them. */

/** What of its weight a pebble of 2650 kg/m³ keeps in water. */
const SUBMERGED = 1 - 1000 / 2650;
/** Drag of water on a tumbling pebble, share of its speed a step; a choice. */
const WATER_DRAG = 0.06;

const SPACING_M = [0.05, 0.13] as const;
const RADIUS_M = [0.003, 0.0055] as const;
/** Pebbles lie this far before and behind the bait's start, m. */
const TOWARDS_M = 4;
const AWAY_M = 0.3;
/** Ground is laid in pieces of this width, m. */
const PIECE_M = 0.012;
/** A bait wakes a pebble this near, m, if it moves more than this in a tick, m. */
const NEAR_M = 0.008;
const MOVES_M = 1e-4;

export class Pebbles {
  readonly radii_m: readonly number[];
  /** x, z (m) and angle (rad) of each. A new array after a tick in which one has moved. */
  places: Float32Array;
  private readonly solids: LooseSolids;

  constructor(stage: Backdrop) {
    const stones = lay(stage);
    this.radii_m = stones.map(({ radius_m }) => radius_m);
    const { x_m, z_m } = stage.bait;
    const bait = { x_m, z_m, radius_m: stage.baitRadius_m };
    this.solids = new LooseSolids(stones, bait, groundOf(stage), {
      pull_m_s2: GRAVITY_M_S2 * SUBMERGED,
      waterDrag: WATER_DRAG
    });
    this.places = this.solids.places();
  }

  /** The bait's lowest point has come to `to`. */
  tick(from: BaitPlace, to: BaitPlace, radius_m: number): void {
    const bait = { x_m: to.x_m, z_m: to.z_m + radius_m };
    if (Math.hypot(to.x_m - from.x_m, to.z_m - from.z_m) > MOVES_M)
      this.solids.wake(bait, (pebble) => radius_m + pebble.radius_m + NEAR_M);
    if (this.solids.step(bait, TICK_S)) this.places = this.solids.places();
  }
}

function lay({ setup, bait, heightAt }: Backdrop): RoundSolid[] {
  const random = seededRandom((setup.bottom.ground?.seed ?? 0) * 104729 + 3);
  const within = ([least, most]: readonly [number, number]) => least + (most - least) * random();
  const towards = -Math.sign(bait.x_m);
  const laid: RoundSolid[] = [];
  for (let along = -AWAY_M; along < TOWARDS_M; along += within(SPACING_M)) {
    const radius_m = within(RADIUS_M);
    const x_m = bait.x_m + towards * along;
    // None under the bait.
    if (Math.abs(along) > 0.03) laid.push({ x_m, z_m: heightAt(x_m) + radius_m, radius_m });
  }
  return laid;
}

function groundOf({ bait, heightAt }: Backdrop): { x: number; z: number }[][] {
  const towards = -Math.sign(bait.x_m);
  const ends = [bait.x_m - 2 * towards * AWAY_M, bait.x_m + towards * (TOWARDS_M + AWAY_M)];
  const first = Math.min(...ends);
  const pieces = Math.ceil(Math.abs(ends[1] - ends[0]) / PIECE_M);
  return Array.from({ length: pieces }, (_, i) => {
    const [a, b] = [first + i * PIECE_M, first + (i + 1) * PIECE_M];
    const foot = Math.min(heightAt(a), heightAt(b)) - 0.04;
    return [
      { x: a, z: foot },
      { x: a, z: heightAt(a) },
      { x: b, z: heightAt(b) },
      { x: b, z: foot }
    ];
  });
}
