import { formatLength, inUnits, PASS_MARK, type Challenge, type Units } from '$lib/scoring';
import type { RoomTry } from '$lib/server/clinic-view';
import type { Asked, Reached } from './spread';

export interface RoomPlot {
  tries: Reached[];
  asked: Asked;
  label: string;
  write: (value: number) => string;
}

const FULL_MARKS = 100;

/** A room's tries for the screen: by distance where one is asked, else by marks. */
export function roomPlot(challenge: Challenge, tries: readonly RoomTry[], units: Units): RoomPlot {
  const goal = challenge.goals.find(({ kind }) => kind === 'travel');
  const ask = inUnits(challenge.ask, units);
  if (goal?.kind === 'travel') {
    return {
      tries: tries.map(({ id, travel_m }) => ({ id, value: travel_m })),
      asked: { target: goal.target_m, band: goal.band_m },
      label: `How far the jig went in each try. ${ask}`,
      write: (value) => formatLength(value, units)
    };
  }
  const middle = (PASS_MARK + FULL_MARKS) / 2;
  return {
    tries: tries.map(({ id, marks }) => ({ id, value: marks })),
    asked: { target: middle, band: FULL_MARKS - middle },
    label: `Marks of each try. ${ask}`,
    write: (value) => String(value)
  };
}
