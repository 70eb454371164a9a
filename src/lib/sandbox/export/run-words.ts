import { MODEL_VERSION, type Setup } from '$lib/model';
import { formatDepth, formatLength, formatWeight, withUnit, type Units } from '$lib/scoring';
import { bothWays, heightWords, movedWords, type Readout } from '../readout';
import { gearOf, lineName, namedLine } from '../gear';

/** What a run was made with: 5/8 oz, 12 lb fluorocarbon, 7 ft rod; 18 ft deep, jig 70 ft out. */
export function gearLine(setup: Setup, units: Units): string {
  const gear = gearOf(setup);
  const depth = formatDepth(gear.depth_m, units);
  const out = formatDepth(gear.cast_m, units);
  return (
    `${formatWeight(gear.mass_kg, units)}, ${lineName(namedLine(gear), units)}, ` +
    `${formatLength(gear.rod_m, units)} rod; ${depth} deep, jig ${out} out`
  );
}

/** How things stand at a moment of a clip. */
export function momentLine(readout: Readout, depth_m: number, units: Units): string {
  const length = (m: number) => formatLength(m, units);
  const height = heightWords(readout, depth_m, units);
  const bite = readout.isBitten ? ` ${movedWords(readout)}` : '';
  const moved = `tip ${length(readout.tip_m)}${bothWays(readout)}, bait ${length(readout.bait_m)}${bite}`;
  return `${withUnit(readout.t_s.toFixed(1), 's')}: ${moved}, ${height}`;
}

/** Where the picture comes from. */
export const SIGNED = `Feltfoot, bait model ${MODEL_VERSION}`;
