/** The parts of matter-js that loose bodies need besides those of the bottom (model/matter.d.ts). */
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
