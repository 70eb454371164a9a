import { inUnits, type Units } from '../scoring';
import { saidMeasured } from './items/said';

/**
 * Where guides see a lift go otherwise than the model does, in the one sentence that every page has.
 * Common practice without a source; beside the model in docs/trade-check.md, a1, a2 and f.
 */
export const GUIDES_SEE =
  'Lifting from nine to ten or eleven, guides see half the model’s travel; to twelve, two thirds. On a fast sweep they see more height. Film yours.';

/** What guides see of the model's travel on a lift by the clock: `GUIDES_SEE` in figures. */
export const GUIDES_PART = 0.5;
/** A lift is told in these: no hand has it nearer. */
const STEP_M: Record<Units, number> = { imperial: 0.1524, metric: 0.1 };

/** "1½ ft", "3 ft": the same lift as guides see it and as the model does, each in its middle. */
export function liftMeans(
  [m]: readonly [number, number],
  units: Units
): [guides: string, model: string] {
  const said = (way_m: number) => {
    const step_m = STEP_M[units];
    return inUnits(saidMeasured(step_m * Math.max(1, Math.round(way_m / step_m))), units);
  };
  return [said(GUIDES_PART * m), said(m)];
}

/** "1 ft", "3½ ft": a lift by the clock, the least that guides see and the most that the model does. */
export function liftTexts(
  [m, half]: readonly [number, number],
  units: Units
): [guides: string, model: string] {
  const step_m = STEP_M[units];
  const least_m = step_m * Math.max(1, Math.floor((GUIDES_PART * (m - half)) / step_m));
  const most_m = step_m * Math.ceil((m + half) / step_m);
  return [inUnits(saidMeasured(least_m), units), inUnits(saidMeasured(most_m), units)];
}
