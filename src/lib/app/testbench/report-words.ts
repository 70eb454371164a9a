import type { FitResult } from '$lib/fit';
import { formatLength, type Units } from '$lib/scoring';
import { MODEL_VERSION } from '$lib/model';
import type { Outfit, TestSession } from '$lib/wire';

type HeldOut = NonNullable<FitResult['held_out']>;

/** "Test 10, from the others alone: travel 2 ft 6 in, 1 ft 10 in to 3 ft 2 in. You measured 2 ft 8 in." */
export function heldOutText({ test, predicted, measured }: HeldOut, units: Units): string {
  if (!predicted) return `The others say nothing about test ${test + 1}.`;
  const length = (m: number) => formatLength(m, units);
  const band = ([least, most]: readonly [number, number]) => `${length(least)} to ${length(most)}`;
  const parts = [
    measured.travel_m !== undefined &&
      `travel ${length(predicted.travel_m)} (${band(predicted.travel_interval90)}), measured ${length(measured.travel_m)}`,
    measured.peak_height_m !== undefined &&
      `highest ${length(predicted.peak_height_m)} (${band(predicted.height_interval90)}), measured ${length(measured.peak_height_m)}`
  ].filter(Boolean);
  return `Test ${test + 1} from the others alone: ${parts.join('; ')}.`;
}

/** The outfit with what a session of its tests found. */
export function withOwnNumbers(
  outfit: Outfit,
  { id }: Pick<TestSession, 'id'>,
  { unknowns, spread }: FitResult,
  at: string
): Outfit {
  const own = {
    unknowns: Object.fromEntries(
      Object.entries(unknowns).map(([name, { estimate, interval90, told }]) => {
        const [least, most] = interval90;
        return [name, { estimate, interval90: [least, most] as [number, number], told }];
      })
    ),
    spread,
    session: id,
    model: MODEL_VERSION,
    at
  };
  return { ...outfit, own, at, asPublished: false };
}
