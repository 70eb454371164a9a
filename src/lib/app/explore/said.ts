import { GUIDES_SEE } from '$lib/course/guides-see';
import { MODEL_VERSION } from '$lib/model';
import { formatDepth, formatTime, type Units } from '$lib/scoring';
import { AXES, type Axis, type AxisName } from './axes';
import { LIFT_OUT_M, LIFT_S, type ExploreBase } from './base';
import { shownReading, type Curve, type Reading } from './chart';
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

/** Where a chart has points, in order. */
export function placesAlong(curves: readonly Curve[]): number[] {
  const all = curves.flatMap(({ points }) => points.map(({ at }) => at));
  return [...new Set(all)].sort((a, b) => a - b);
}

/** The place nearest to a value; null where there is none yet. */
export function nearestPlace(places: readonly number[], value: number): number | null {
  return places.reduce<number | null>(
    (best, at) => (best === null || Math.abs(at - value) < Math.abs(best - value) ? at : best),
    null
  );
}

/** What a lift is charted with at first, told where a sweep was before: it is another cast. */
export const liftWords = (units: Units) =>
  `A lift starts ${formatDepth(LIFT_OUT_M, units)} out and takes ${formatTime(LIFT_S)}: change both below.`;

/** What stands under a chart, a sentence each. */
export function besideWords(
  { kind, setup, duration_s }: ExploreBase,
  figure: FigureName,
  axis: AxisName,
  curves: readonly Curve[],
  units: Units
): string[] {
  const isRun = FIGURES[figure].kind === 'runs';
  const isLift = isRun && kind === 'lift';
  return [
    hardlyChanges(curves, figure) && `“${AXES[axis].name}” hardly changes this.`,
    isLift && figure === 'travel_m' && 'How far is not how high. Look at how high it gets, too.',
    isLift && axis === 'line' && 'Braid lifts the jig higher than mono.',
    isLift &&
      axis === 'weight' &&
      figure === 'peak_height_m' &&
      'On a quick lift weight hardly matters. Slow it down and it does.',
    isLift && setup.start.bait_x_m === LIFT_OUT_M && duration_s === LIFT_S
      ? `For a lift the jig is now ${formatDepth(LIFT_OUT_M, units)} out, and the move takes ${formatTime(LIFT_S)}. From farther out, a lift drags it.`
      : isLift && 'From farther out, a lift drags it.',
    isLift && GUIDES_SEE,
    figure === 'limit_m_s' &&
      'That’s with the slack you set. The boat card leaves room for more: fish by its count.',
    isRun && axis !== 'slack' && 'Slack is as you set it: move it, and see how much it matters.'
  ].filter((one) => one !== false);
}

/** All of a curve lies within what is likely at each of its points. */
function hardlyChanges(curves: readonly Curve[], figure: FigureName): boolean {
  const [{ points } = { points: [] }, ...others] = curves.filter(({ isKept }) => !isKept);
  const readings = points.flatMap(({ readings }) => readings[figure] ?? []);
  const values = readings.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return (
    others.length === 0 &&
    readings.length > 1 &&
    most > 0 &&
    readings.every(({ ends }) => ends && ends[0] <= least && ends[1] >= most)
  );
}

/** What a chart says at one place, a sentence a curve. */
export interface Said {
  curve: Curve;
  /** "1/2 oz: 2 ft in 2 seconds may stay down" */
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
    const point = curve.points.find((one) => one.at === at);
    const reading = shownReading(figure, point?.readings[figure]);
    if (!reading) return [];
    const name = curve.isKept ? ['Before', curve.name].filter(Boolean).join(', ') : curve.name;
    const place = name || axis.text(at, units);
    return [{ curve, text: `${place}: ${readingText(reading, figure, units)}` }];
  });
}

function readingText({ value, ends, hand }: Reading, figure: FigureName, units: Units): string {
  const { text } = FIGURES[figure];
  const said = (one: number) => text(Math.max(0, one), units);
  const range = ([low, high]: readonly [number, number]) =>
    said(low) === said(high) ? said(low) : `${said(low)} to ${said(high)}`;
  if (figure === 'limit_m_s')
    return value > 0 ? `${said(value)} may stay down` : 'no pace stays down';
  const isOpen = ends && range(ends) !== said(value);
  return [said(value), isOpen && `likely ${range(ends)}`, hand && `your hand ${range(hand)}`]
    .filter(Boolean)
    .join('; ');
}
