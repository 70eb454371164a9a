import { typedLength_m, type Units } from '$lib/scoring';
import type { CameraLook } from '$lib/wire';

type LookMove = CameraLook['move'];

/** Moves that a camera below the boat is shown: those that a pool is tested with, as a hand says them. */
export const LOOK_MOVES: readonly { says: string; move: LookMove }[] = [
  {
    says: 'Sweep to 60° in 3 s',
    move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 }
  },
  {
    says: 'Sweep 30° to 60° in ½ s',
    move: { kind: 'sweep', from_deg: 30, to_deg: 60, duration_s: 0.5, elevation_deg: 0 }
  },
  { says: 'Rod 9 to 10, ½ s', move: { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.5 } },
  { says: 'Rod 9 to 11, 2 s', move: { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 2 } }
];

/** What is typed of a look; an empty length was not seen. */
export interface LookDraft {
  move: number;
  out: string;
  travel: string;
  height: string;
}

/** The look, or which field must be what. */
export function readLook(draft: LookDraft, units: Units): CameraLook | { fault: string } {
  const isMetric = units === 'metric';
  const long = typedLength_m(draft.out, isMetric ? 'm' : 'ft');
  const short = (text: string) =>
    text.trim() === '' ? undefined : typedLength_m(text, isMetric ? 'cm' : 'in');
  const [travel_m, peak_height_m] = [short(draft.travel), short(draft.height)];
  const like = isMetric ? ['12 m', '40 cm'] : ['40 ft', '1 ft 4 in'];
  if (long === null || long < 0.5 || long > 100)
    return { fault: `Jig out must be like ${like[0]}.` };
  if (travel_m === null || Math.abs(travel_m ?? 0) > 20) {
    return { fault: `Jig came must be like ${like[1]}.` };
  }
  if (peak_height_m === null || (peak_height_m ?? 0) < 0 || (peak_height_m ?? 0) > 20) {
    return { fault: `Highest must be like ${like[1]}, or 0.` };
  }
  if (travel_m === undefined && peak_height_m === undefined) {
    return { fault: 'Fill in how far it came, or how high.' };
  }
  return {
    move: LOOK_MOVES[draft.move].move,
    out_m: long,
    ...(travel_m !== undefined && { travel_m }),
    ...(peak_height_m !== undefined && { peak_height_m })
  };
}
