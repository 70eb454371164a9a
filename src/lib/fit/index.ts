/** The model's unknowns from measurements, and the next best test. See docs/fit.md. */
export {
  fit,
  type Estimate,
  type FitOptions,
  type FitResult,
  type Prediction90,
  type TestFit
} from './fit';
export type { NextTest } from './next-test';
export { parseSession, type PoolTest, type Session, type UnknownName } from './session';
export { instruction } from './verdict';
