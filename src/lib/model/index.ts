/** The bait model: pure physics in SI units. See docs/model.md. */
export * from './units';
export { recordScenario, ScenarioRun, simulate, simulateScenario } from './simulate';
export { RunsAhead, RunWanted, withRunsAhead } from './runs-ahead';
export type { LineHistory } from './line-history';
export type { RecordedRun } from './recorded-run';
export { LiveRun } from './live-run';
export { Run, type Result } from './run';
export { MODEL_VERSION } from './version';
export { isOffBottom, OFF_BOTTOM_M, REST_SPEED_M_S, riseOver, SKIP_M } from './lift-off';
export { contactBeside, liftsOf, type Lift } from './lifts';
export type { Hop, RunEvent, Trace } from './record';
export {
  parseScenario,
  parseSetup,
  lineProperties,
  submergedFraction,
  ScenarioError,
  type Scenario,
  type ScenarioInput,
  type Setup,
  type SetupInput
} from './scenario';
export {
  baseMove,
  MOST_SAMPLES,
  ROD_RATE_HZ,
  rodInputSchema,
  TICK_S,
  type Move,
  type RodInput,
  type SequenceStep
} from './move';
export type { LineMaterialName } from './materials';
export { raisedMove } from './raised-move';
export {
  anglesIn,
  minimumJerk,
  pieceAt,
  timelineOf,
  type RodAngles,
  type Timeline
} from './rod-path';
export { STANDARD_ROD } from './standard-rod';
export { tipOf, tipPathOf, type Point, type TipPath } from './tip-path';
export { numberIn } from './schema-parts';
export { baitOf } from './bait';
export { waterAt, waterDensity, waterViscosity } from './water';
export { cylinderDragCoefficient, fallSpeed } from './drag';
export {
  GROUNDS,
  GROUND_KINDS,
  groundOf,
  stemsOf,
  stonesOf,
  type GroundKind,
  type Stem,
  type Stone
} from './ground';
export { BITE_S, type Bite } from './bite';
export { seededRandom, type Random } from './random';
export { carriedPull, FELT_RATE_HZ, feltFrom, FeltStream, feltSignal, passedOn } from './felt';
