import { rulerTicks } from '$lib/sandbox/ruler';
import { formatLength, inUnits, PASS_MARK, type Challenge, type Units } from '$lib/scoring';
import { spreadOf, type SpreadTick, type Spread } from './spread';
import type { RoomTry } from '$lib/wire';

export interface RoomPlot {
  spread: Spread;
  label: string;
}

const FULL_MARKS = 100;
const MARKS_STEP = 25;

/** A room's tries for the screen: by distance where one is asked, else by marks. */
export function roomPlot(challenge: Challenge, tries: readonly RoomTry[], units: Units): RoomPlot {
  const goal = challenge.goals.find(({ kind }) => kind === 'travel');
  const ask = inUnits(challenge.ask, units);
  if (goal?.kind === 'travel') {
    const reached = tries.map(({ id, travel_m }) => ({ id, value: travel_m }));
    const asked = { target: goal.target_m, band: goal.band_m };
    const ruler = (from: number, to: number, scale: number, apart: number) =>
      rulerTicks(from, to, scale, units, apart)
        .filter(({ rank }) => rank === 2)
        .map(({ at_m, label }) => ({ value: at_m, label }));
    return {
      spread: spreadOf(reached, asked, formatLength(goal.target_m, units), ruler),
      label: `How far the jig went in each try. ${ask}`
    };
  }
  const reached = tries.map(({ id, marks }) => ({ id, value: marks }));
  const middle = (PASS_MARK + FULL_MARKS) / 2;
  const asked = { target: middle, band: FULL_MARKS - middle };
  return {
    spread: spreadOf(reached, asked, String(middle), markRuler),
    label: `Marks of each try. ${ask}`
  };
}

function markRuler(): SpreadTick[] {
  const steps = Array.from({ length: FULL_MARKS / MARKS_STEP + 1 }, (_, i) => i * MARKS_STEP);
  return steps.map((value) => ({ value, label: String(value) }));
}
