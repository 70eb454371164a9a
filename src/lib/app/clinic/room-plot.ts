import { askedRangeText, figureScale, inUnits, type Challenge, type Units } from '$lib/scoring';
import { spreadOf, type Spread } from './spread';
import type { RoomTry } from '$lib/wire';

export interface RoomPlot {
  spread: Spread;
  /** What the axis is of. */
  name: string;
  /** What was asked of it; empty where no range was. */
  asked: string;
  label: string;
  /** What the marks leave out. */
  note: string;
}

/** A room's tries for the screen, by the figure of their task. */
export function roomPlot(challenge: Challenge, tries: readonly RoomTry[], units: Units): RoomPlot {
  const scale = figureScale(challenge);
  const reached = tries.flatMap(({ id, figure, passed }) =>
    figure === null ? [] : [{ id, value: figure, isRight: passed }]
  );
  const lacking = tries.length - reached.length;
  const asked = askedRangeText(scale, units);
  return {
    spread: spreadOf(reached, scale, units),
    name: scale.name,
    asked: asked && `asked: ${asked}`,
    label: `${scale.name}, one mark a try. ${inUnits(challenge.ask, units)}`,
    note: lacking > 0 ? `${lacking} ${lacking === 1 ? 'try is' : 'tries are'} not on it.` : ''
  };
}
