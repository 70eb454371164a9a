import { MODEL_VERSION } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { Axis } from './axes';
import type { Curve, Reading } from './curves';
import { FIGURES, type FigureName } from './figures';

/** The marks of several curves, for where there is no drawing of them. */
const MARKS = ['■', '▲', '◆'];

/** What stands under a chart that is saved: where it is read off, what is drawn, and whose model it is. */
export function savedWords(told: readonly Said[], place: string): string[] {
  const own = told.filter(({ curve }) => !curve.isKept);
  const text = (one: Said) => {
    const mark = own.length > 1 ? MARKS[own.indexOf(one)] : undefined;
    return mark ? `${mark} ${one.text}` : one.text;
  };
  const hasHand = told.some(({ text }) => text.includes('your hand'));
  return [
    ...(own.length > 1 ? [`At ${place}:`] : []),
    ...told.map(text),
    `Hatched or barred: likely.${hasHand ? ' Dotted: your hand, 9 tries in 10.' : ''} Feltfoot model ${MODEL_VERSION}.`
  ];
}

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
  const range = ([low, high]: readonly [number, number]) =>
    said(low) === said(high) ? said(low) : `${said(low)} to ${said(high)}`;
  return [said(value), ends && `likely ${range(ends)}`, hand && `your hand ${range(hand)}`]
    .filter(Boolean)
    .join('; ');
}
