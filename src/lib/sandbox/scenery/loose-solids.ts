import { MM, staticBody } from '$lib/model/solids';
import Body from 'matter-js/src/body/Body.js';
import Composite from 'matter-js/src/body/Composite.js';
import Engine from 'matter-js/src/core/Engine.js';
import Sleeping from 'matter-js/src/core/Sleeping.js';

/**
 * Loose stones as the rigid-body library moves them, in metres. Its engine stands apart from
 * `model/solids`: the model needs none, and only a picture of gravel fetches it.
 */

/** Sides of a stone and of what knocks it. */
const SIDES = 7;
const FRICTION = 0.5;
/** A stone that is awake needs the ground this far around it, m: it is knocked no farther. */
const ROLLS_M = 0.12;

interface Place {
  readonly x_m: number;
  readonly z_m: number;
}
/** A stone's middle and radius, m. */
export interface RoundSolid extends Place {
  readonly radius_m: number;
}
interface Physics {
  /** Pull on a stone for each of its mass, m/s². */
  readonly pull_m_s2: number;
  /** What water takes of a stone's speed, share a step. */
  readonly waterDrag: number;
}

export class LooseSolids {
  private readonly engine = Engine.create({ enableSleeping: true });
  private readonly stones: Body[];
  private readonly knocker: Body;
  /** Pieces of the ground that are not yet in the engine's world: it looks at each of its bodies. */
  private readonly ground: Set<Body>;

  /** @param ground outlines of its pieces, m */
  constructor(
    private readonly laid: readonly RoundSolid[],
    knocker: RoundSolid,
    ground: readonly (readonly { x: number; z: number }[])[],
    { pull_m_s2, waterDrag }: Physics
  ) {
    const { gravity, world } = this.engine;
    gravity.x = 0;
    gravity.y = -1;
    // Millimetres a square millisecond.
    gravity.scale = pull_m_s2 / MM;
    this.stones = laid.map((stone) => round(stone, { frictionAir: waterDrag, friction: FRICTION }));
    this.stones.forEach((body) => Sleeping.set(body, true));
    this.knocker = round(knocker, { isStatic: true });
    this.ground = new Set(ground.map(staticBody));
    Composite.add(world, [this.knocker]);
  }

  /** Wakes each stone that lies nearer than this to what knocks it, m between their middles. */
  wake({ x_m, z_m }: Place, near: (stone: RoundSolid) => number): void {
    this.stones.forEach((body, i) => {
      const away = Math.hypot(body.position.x - x_m * MM, body.position.y - z_m * MM);
      if (!body.isSleeping || away >= near(this.laid[i]) * MM) return;
      Sleeping.set(body, false);
      Composite.add(this.engine.world, [body, ...this.groundNear(body)]);
    });
  }

  /** Moves what knocks to its place, and on by one step. @returns whether any stone was awake */
  step({ x_m, z_m }: Place, step_s: number): boolean {
    Body.setPosition(this.knocker, { x: x_m * MM, y: z_m * MM }, true);
    const awake = this.stones.filter(({ isSleeping }) => !isSleeping);
    if (awake.length === 0) return false;
    Engine.update(this.engine, step_s * 1000);
    const asleep = awake.filter(({ isSleeping }) => isSleeping);
    asleep.forEach((body) => Composite.remove(this.engine.world, body));
    return true;
  }

  /** x, z (m) and angle (rad) of each stone, one after the other. */
  places(): Float32Array {
    return Float32Array.from(
      this.stones.flatMap(({ position, angle }) => [position.x / MM, position.y / MM, angle])
    );
  }

  private groundNear({ position }: Body): Body[] {
    const near = [...this.ground].filter(
      (piece) => Math.abs(piece.position.x - position.x) < ROLLS_M * MM
    );
    near.forEach((piece) => this.ground.delete(piece));
    return near;
  }
}

function round({ x_m, z_m, radius_m }: RoundSolid, options: object): Body {
  const vertices = Array.from({ length: SIDES }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES;
    return { x: radius_m * MM * Math.cos(angle), y: radius_m * MM * Math.sin(angle) };
  });
  return Body.create({ ...options, position: { x: x_m * MM, y: z_m * MM }, vertices });
}
