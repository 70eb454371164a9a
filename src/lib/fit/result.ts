import type { NextTest } from './next-test';
import type { OwnSpread, UnknownName } from '../scoring';

/** What the tests say of one unknown, in the unit of its name. */
export interface Estimate {
  readonly estimate: number;
  /** Holds the truth nine times in ten, where the model holds. */
  readonly interval90: readonly [number, number];
  /** Whether the tests tell it: whether the interval is clearly narrower than before any test. */
  readonly told: boolean;
}

/** What a test is predicted to give, with where a measurement of it falls nine times in ten, m. */
export interface Prediction90 {
  readonly travel_m: number;
  readonly travel_interval90: readonly [number, number];
  readonly peak_height_m: number;
  readonly height_interval90: readonly [number, number];
}

export interface TestFit {
  readonly predicted: Prediction90 | null;
  readonly measured: { readonly travel_m?: number; readonly peak_height_m?: number };
}

export interface FitResult {
  readonly unknowns: Partial<Record<UnknownName, Estimate>>;
  readonly tests: readonly TestFit[];
  /** The last measured test, predicted from the others alone; null where there are too few. */
  readonly held_out: (TestFit & { readonly test: number }) | null;
  /** What the tests leave open, joint: see docs/fit.md. */
  readonly spread: OwnSpread;
  readonly next: readonly NextTest[];
  readonly verdict: string;
}
