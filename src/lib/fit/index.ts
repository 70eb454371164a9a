/** The model's unknowns from measurements, and the next best test. See docs/fit.md. */
export { agreementOf, chiSquare95, LOOK_AT_Z, OFF_AT_Z, type PooledValue } from './agreement';
export { fit } from './fit';
export { droppedAreaOf, outfitGearOf, stiffnessOf } from './outfit';
export {
  isMeasured,
  newTestSession,
  sessionFromLog,
  testedBefore,
  withOutfit
} from './outfit-session';
export { dragAreaOf, fallTime_s, lineFallTime_s } from './timed-drop';
export type { Estimate, FitResult } from './result';
export { parseSession, sessionInputOf } from './session';
export { instruction } from './verdict';
export { ownValueOf, POOLED_NAMES, POOLED_SCALE, type PooledName } from './without-prior';
