/** The bait model: pure physics in SI units. See docs/model.md. */
export * from './units';
export { simulate, simulateScenario } from './simulate';
export { LiveRun, type RodAngles } from './live-run';
export { Run, TICK_S, MODEL_VERSION, type Result } from './run';
export type { Hop, Summary, Trace } from './record';
export {
  parseScenario,
  parseSetup,
  lineProperties,
  submergedFraction,
  ScenarioError,
  type Scenario,
  type ScenarioInput,
  type Setup,
  type SetupInput,
  type Stone
} from './scenario';
export { ROD_RATE_HZ, type Move, type RodInput, type SequenceStep } from './move';
export { LINE_MATERIALS, type LineMaterialName } from './materials';
export { tipOf, tipPathOf, minimumJerk, type Point, type TipPath } from './tip-path';
export { waterAt, waterDensity, waterViscosity } from './water';
export { cylinderDragCoefficient, fallSpeed } from './drag';
