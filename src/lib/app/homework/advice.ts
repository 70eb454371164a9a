import { figureSide, formatFigure, toldFigure, type TaskFigure, type Units } from '$lib/scoring';
import type { FigureLevel } from '$lib/wire';

/**
 * How far the hand is off, in words: an average only where it is most of the error. What lies in the
 * band is not off, wherever in it.
 */
export function errorWords(figure: TaskFigure, level: FigureLevel, units: Units): string {
  const { value, off, sd, tries, less, more } = level;
  const text = (value: number) => formatFigure(figure, value, units);
  const average = `${text(value)} on average, give or take ${text(sd)}`;
  if (!figure.asked) return average;
  if (Math.abs(off) >= sd && off !== 0) {
    if (figureSide(figure, value) === 0) return average;
    if (figure.unit === 'marks')
      return `${figure.less} on average: ${text(value)}, give or take ${text(sd)}`;
    return `${missWords(figure, value, units)} on average, give or take ${text(sd)}`;
  }
  const sides = [
    less > 0 ? `${less} ${figure.less}` : '',
    more > 0 ? `${more} ${figure.more}` : '',
    tries > less + more ? `${tries - less - more} on target` : ''
  ].filter(Boolean);
  return `${sides.join(', ')}: tries differ by ${text(sd)}`;
}

/** What each of a few tries reached, and how far that missed: too few for an average. */
export function fewWords(figure: TaskFigure, values: readonly number[], units: Units): string {
  return listed(
    values.map((value) => {
      const { reached } = toldFigure(figure, value, units);
      const isIn = figureSide(figure, value) === 0;
      return isIn ? reached : `${reached} (${missWords(figure, value, units)})`;
    })
  );
}

/** "7 in too far"; of marks only that they were too few. */
function missWords(figure: TaskFigure, value: number, units: Units): string {
  const side = figureSide(figure, value) > 0 ? figure.more : figure.less;
  if (figure.unit === 'marks') return side;
  return `${isHair(figure, value, units) ? 'a hair' : missText(figure, value, units)} ${side}`;
}

const missText = (figure: TaskFigure, value: number, units: Units) =>
  toldFigure(figure, value, units).miss;

/** Whether the miss rounds to nothing. */
const isHair = (figure: TaskFigure, value: number, units: Units) =>
  missText(figure, value, units) === formatFigure(figure, 0, units);

const listed = (words: readonly string[]) =>
  [words.slice(0, -1).join(', '), words.at(-1)].filter(Boolean).join(' and ');

const STEADY = 'The hand is uneven. Same move again, slowly, the same every time.';

/** What a guide would say next to this hand. */
export function adviceWords(figure: TaskFigure, { advice, value }: FigureLevel, units: Units) {
  const isMissed = advice === 'raise' || advice === 'lower';
  if (isMissed && isHair(figure, value, units)) return 'Hardly anything to change.';
  const size = missText(figure, value, units);
  const words: Record<FigureLevel['advice'], () => string> = {
    raise: () => figure.raise(size),
    lower: () => figure.lower(size),
    steady: () => figure.steady ?? STEADY,
    harder: () => 'In the band. Make it harder: hide the jig, or change the depth.',
    unclear: () => 'Too few, and too far apart, to say more. Ask for five tries in a row.'
  };
  return words[advice]();
}
