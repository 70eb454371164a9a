import { formatLength, type Units } from '$lib/scoring';
import type { FitResult } from '$lib/fit';
import type { Move } from '$lib/model';
import { scaleLinear } from 'd3-scale';

/** One measurement beside its prediction, m from what is predicted. */
export interface Residual {
  name: string;
  measured_m: number;
  predicted_m: number;
  off_m: number;
  band_m: readonly [number, number];
  isInside: boolean;
}

export type Figure = 'travel' | 'height';

/** Of every test of which this was measured. */
export function shownResiduals(
  result: FitResult,
  moves: readonly Move[],
  figure: Figure
): Residual[] {
  return result.tests.flatMap(({ predicted, measured }, i) => {
    const measured_m = figure === 'travel' ? measured.travel_m : measured.peak_height_m;
    if (!predicted || measured_m === undefined) return [];
    const isTravel = figure === 'travel';
    const predicted_m = isTravel ? predicted.travel_m : predicted.peak_height_m;
    const [least, most] = isTravel ? predicted.travel_interval90 : predicted.height_interval90;
    return [
      {
        name: `${i + 1}  ${shortMove(moves[i])}`,
        measured_m,
        predicted_m,
        off_m: measured_m - predicted_m,
        band_m: [least - predicted_m, most - predicted_m] as const,
        isInside: measured_m >= least && measured_m <= most
      }
    ];
  });
}

/** "lift 0–40°, 1.5 s" */
function shortMove(move: Move): string {
  if (move.kind !== 'lift' && move.kind !== 'sweep') return 'as filmed';
  return `${move.kind} ${move.from_deg}–${move.to_deg}°, ${move.duration_s} s`;
}

/** Where it stands in a plot so wide, px, and the ticks of its axis. */
export function residualScale(all: readonly Residual[], units: Units, from: number, to: number) {
  const unit_m = units === 'metric' ? 0.01 : 0.0254;
  const most = Math.max(
    unit_m,
    ...all.flatMap(({ off_m, band_m }) => [off_m, ...band_m].map(Math.abs))
  );
  const x = scaleLinear([-most / unit_m, most / unit_m], [from, to]).nice();
  return {
    x: (m: number) => x(m / unit_m),
    ticks: x
      .ticks(5)
      .map((at) => ({ x: x(at), text: `${at < 0 ? '−' : at > 0 ? '+' : ''}${Math.abs(at)}` })),
    unit: units === 'metric' ? 'cm' : 'in'
  };
}

/** "Measured 2 ft 1 in, predicted 1 ft 11 in, 1 ft 6 in to 2 ft 4 in" */
export function residualText({ measured_m, predicted_m, band_m }: Residual, units: Units): string {
  const length = (m: number) => formatLength(m, units);
  const [least, most] = band_m.map((by) => length(predicted_m + by));
  return `Measured ${length(measured_m)}, predicted ${length(predicted_m)}, ${least} to ${most}`;
}
