import type { Units } from '$lib/scoring';
import type { Axis } from './axes';
import type { Curve, Reading } from './curves';
import { FIGURES, type FigureName } from './figures';

/** What a chart says at one place, a sentence a curve. */
export interface Said {
  curve: Curve;
  /** "1/2 oz: 1.4 ft/s, 0.9 to 2.1 ft/s" */
  text: string;
}

export function saidAt(
  curves: readonly Curve[],
  axis: Axis,
  figure: FigureName,
  at: number,
  units: Units
): Said[] {
  return curves.flatMap((curve) => {
    const reading = curve.points.find((one) => one.at === at)?.readings[figure];
    if (!reading) return [];
    const name = curve.isKept ? ['Before', curve.name].filter(Boolean).join(', ') : curve.name;
    const place = name || axis.text(at, units);
    return [{ curve, text: `${place}: ${readingText(reading, figure, units)}` }];
  });
}

function readingText({ value, ends, hand }: Reading, figure: FigureName, units: Units): string {
  const { text } = FIGURES[figure];
  const said = (one: number) => text(Math.max(0, one), units);
  if (figure === 'limit_m_s' && value === 0) return 'no pace keeps it down';
  const range = ([low, high]: readonly [number, number]) => `${said(low)} to ${said(high)}`;
  return [said(value), ends && `likely ${range(ends)}`, hand && `your hand ${range(hand)}`]
    .filter(Boolean)
    .join('; ');
}
