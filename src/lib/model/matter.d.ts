/**
 * The few parts of matter-js that the bottom and loose scenery use, imported from its sources (half the
 * size of the bundle). Written out because the published types cover only the bundle.
 */
declare module 'matter-js/src/body/Body.js' {
  import type { CollisionBody, Vector } from 'matter-js/src/collision/Query.js';
  interface Body extends CollisionBody {
    readonly angle: number;
    readonly isSleeping: boolean;
  }
  const Body: {
    create(options: { isStatic?: boolean; position: Vector; vertices: Vector[] }): Body;
    /** With `updateVelocity`, the body is taken to have moved there since it was put last. */
    setPosition(body: CollisionBody, position: Vector, updateVelocity?: boolean): void;
  };
  export default Body;
}
declare module 'matter-js/src/collision/Query.js' {
  export interface Vector {
    x: number;
    y: number;
  }
  export interface CollisionBody {
    readonly id: number;
    readonly position: Vector;
    readonly vertices: Vector[];
  }
  export interface Collision {
    readonly bodyA: CollisionBody;
    readonly bodyB: CollisionBody;
    /** Overlap along `normal`. */
    readonly depth: number;
    readonly normal: Vector;
  }
  const Query: {
    collides(body: CollisionBody, bodies: readonly CollisionBody[]): Collision[];
  };
  export default Query;
}
declare module 'matter-js/src/geometry/Vertices.js' {
  const Vertices: { centre(vertices: Vector[]): Vector };
  export default Vertices;
}
declare module 'matter-js/src/body/Composite.js' {
  import type Body from 'matter-js/src/body/Body.js';
  interface World {
    readonly bodies: Body[];
  }
  const Composite: {
    add(world: World, bodies: readonly Body[]): World;
    remove(world: World, body: Body): World;
  };
  export default Composite;
}
declare module 'matter-js/src/core/Engine.js' {
  import type { World } from 'matter-js/src/body/Composite.js';
  interface Engine {
    readonly gravity: { x: number; y: number; scale: number };
    readonly world: World;
  }
  const Engine: {
    create(options: { enableSleeping: boolean }): Engine;
    update(engine: Engine, step_ms: number): void;
  };
  export default Engine;
}
declare module 'matter-js/src/core/Sleeping.js' {
  import type Body from 'matter-js/src/body/Body.js';
  const Sleeping: { set(body: Body, isSleeping: boolean): void };
  export default Sleeping;
}
