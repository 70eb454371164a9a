import { seededRandom, TICK_S } from '$lib/model';
import { MM, staticBody } from '$lib/model/solids';
import { GRAVITY_M_S2 } from '$lib/model/units';
import Body from 'matter-js/src/body/Body.js';
import Composite from 'matter-js/src/body/Composite.js';
import Engine from 'matter-js/src/core/Engine.js';
import Sleeping from 'matter-js/src/core/Sleeping.js';
import type { Backdrop } from '../stage';
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
/** Sides of a pebble and of the bait. */
const SIDES = 7;
/** A pebble that is awake needs the ground this far around it, m: it is knocked no farther. */
const ROLLS_M = 0.12;
/** A bait wakes a pebble this near, m, if it moves more than this in a tick, m. */
const NEAR_M = 0.008;
const MOVES_M = 1e-4;

export class Pebbles {
  readonly radii_m: readonly number[];
  /** x, z (m) and angle (rad) of each. A new array after a tick in which one has moved. */
  places: Float32Array;
  private readonly engine = Engine.create({ enableSleeping: true });
  private readonly bodies: Body[];
  private readonly bait: Body;
  /** Pieces of the ground that are not yet in the engine's world: it looks at each of its bodies. */
  private readonly ground: Set<Body>;

  constructor(stage: Backdrop) {
    const { gravity, world } = this.engine;
    gravity.x = 0;
    gravity.y = -1;
    // Millimetres a square millisecond.
    gravity.scale = (GRAVITY_M_S2 * SUBMERGED) / MM;
    const laid = lay(stage);
    this.radii_m = laid.map(({ radius_m }) => radius_m);
    this.bodies = laid.map(({ x_m, radius_m }) => {
      const z_m = stage.heightAt(x_m) + radius_m;
      const body = round({ x_m, z_m }, radius_m, { frictionAir: WATER_DRAG, friction: 0.5 });
      Sleeping.set(body, true);
      return body;
    });
    this.bait = round({ x_m: stage.bait.x_m, z_m: stage.bait.z_m }, stage.baitRadius_m, {
      isStatic: true
    });
    this.ground = new Set(groundOf(stage));
    Composite.add(world, [this.bait]);
    this.places = this.read();
  }

  /** The bait's lowest point has come to `to`. */
  tick(from: BaitPlace, to: BaitPlace, radius_m: number): void {
    const x = to.x_m * MM;
    const y = (to.z_m + radius_m) * MM;
    if (Math.hypot(to.x_m - from.x_m, to.z_m - from.z_m) > MOVES_M) this.wake(x, y, radius_m);
    Body.setPosition(this.bait, { x, y }, true);
    const awake = this.bodies.filter(({ isSleeping }) => !isSleeping);
    if (awake.length === 0) return;
    Engine.update(this.engine, TICK_S * 1000);
    const asleep = awake.filter(({ isSleeping }) => isSleeping);
    asleep.forEach((body) => Composite.remove(this.engine.world, body));
    this.places = this.read();
  }

  private wake(x: number, y: number, radius_m: number): void {
    this.bodies.forEach((body, i) => {
      const reach = (radius_m + this.radii_m[i] + NEAR_M) * MM;
      const isNear = Math.hypot(body.position.x - x, body.position.y - y) < reach;
      if (!isNear || !body.isSleeping) return;
      Sleeping.set(body, false);
      Composite.add(this.engine.world, [body, ...this.groundNear(body)]);
    });
  }

  private groundNear({ position }: Body): Body[] {
    const near = [...this.ground].filter(
      (piece) => Math.abs(piece.position.x - position.x) < ROLLS_M * MM
    );
    near.forEach((piece) => this.ground.delete(piece));
    return near;
  }

  private read(): Float32Array {
    const places = new Float32Array(this.bodies.length * 3);
    this.bodies.forEach(({ position, angle }, i) => {
      places[3 * i] = position.x / MM;
      places[3 * i + 1] = position.y / MM;
      places[3 * i + 2] = angle;
    });
    return places;
  }
}

function lay({ setup, bait }: Backdrop): { x_m: number; radius_m: number }[] {
  const random = seededRandom((setup.bottom.ground?.seed ?? 0) * 104729 + 3);
  const within = ([least, most]: readonly [number, number]) => least + (most - least) * random();
  const towards = -Math.sign(bait.x_m);
  const laid: { x_m: number; radius_m: number }[] = [];
  for (let along = -AWAY_M; along < TOWARDS_M; along += within(SPACING_M)) {
    const radius_m = within(RADIUS_M);
    // None under the bait.
    if (Math.abs(along) > 0.03) laid.push({ x_m: bait.x_m + towards * along, radius_m });
  }
  return laid;
}

function groundOf({ bait, heightAt }: Backdrop): Body[] {
  const towards = -Math.sign(bait.x_m);
  const ends = [bait.x_m - 2 * towards * AWAY_M, bait.x_m + towards * (TOWARDS_M + AWAY_M)];
  const first = Math.min(...ends);
  const pieces = Math.ceil(Math.abs(ends[1] - ends[0]) / PIECE_M);
  return Array.from({ length: pieces }, (_, i) => {
    const [a, b] = [first + i * PIECE_M, first + (i + 1) * PIECE_M];
    const foot = Math.min(heightAt(a), heightAt(b)) - 0.04;
    return staticBody([
      { x: a, z: foot },
      { x: a, z: heightAt(a) },
      { x: b, z: heightAt(b) },
      { x: b, z: foot }
    ]);
  });
}

function round({ x_m, z_m }: BaitPlace, radius_m: number, options: object): Body {
  const vertices = Array.from({ length: SIDES }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES;
    return { x: radius_m * MM * Math.cos(angle), y: radius_m * MM * Math.sin(angle) };
  });
  return Body.create({ ...options, position: { x: x_m * MM, y: z_m * MM }, vertices });
}
