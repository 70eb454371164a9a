import { JIGS, castOut, waterWith } from '../../course/lessons/fathomley';
import { usualWeight_kg } from '../../course/usual-weight';
import {
  fallSpeed,
  GRAVITY_M_S2,
  parseSetup,
  simulate,
  submergedFraction,
  waterDensity
} from '../../model';
import { withOutfitGear, type Conditions, type JigChoice } from '../../wire';

/**
 * A count that a learner can hold, s: with it the model picks, in light wind, weights inside the ranges
 * of common practice from 1/4 oz at 11 ft to 1 oz at 30 ft. A project's own choice, no source.
 */
export const MOST_COUNT_S = 12;
/** The line holds a fall back by less than this: 1.15 times as long was the most, for 1/4 oz at 30 ft. */
const LINE_HOLDS_BACK = 1.5;
const CAST_M = 18;
const still = { kind: 'lift', from_deg: 45, to_deg: 45, duration_s: 0.1 } as const;

const masses = Object.values(JIGS).sort((a, b) => a - b);

/**
 * What guides tie on at this depth, or the next heavier of the locker that is down in MOST_COUNT_S, or the heaviest. A strong wind asks for
 * one size more: it hardly changes the fall, but bows the line, and feel is lost first.
 */
export function jigFor(conditions: Conditions): JigChoice {
  if (conditions.jig_kg) return fixedJig(conditions.jig_kg, conditions);
  // A jig weighs a little less than its label.
  const least_kg = 0.99 * usualWeight_kg(conditions.depth_m);
  const inTime = masses.findIndex((mass_kg) => mass_kg >= least_kg && isDown(mass_kg, conditions));
  const heaviest = masses.length - 1;
  const light = inTime < 0 ? heaviest : inTime;
  const at = Math.min(heaviest, light + (conditions.wind === 'strong' ? 1 : 0));
  const mass_kg = masses[at];
  const count_s = downIn(mass_kg, conditions);
  return { mass_kg, count_s, isLong: inTime < 0, isHeavierForWind: at > light };
}

function fixedJig(mass_kg: number, conditions: Conditions): JigChoice {
  const count_s = downIn(mass_kg, conditions);
  return { mass_kg, count_s, isLong: count_s > MOST_COUNT_S, isHeavierForWind: false };
}

/** From the splash to the bottom, s, however long that takes. */
function downIn(mass_kg: number, conditions: Conditions): number {
  const count_s = countOf(mass_kg, conditions, LINE_HOLDS_BACK * freeFall(mass_kg, conditions));
  if (count_s === null) throw new Error(`${mass_kg} kg at ${conditions.depth_m} m: never down`);
  return count_s;
}

/** Without a line it would fall sooner, which spares most runs of the model. */
function isDown(mass_kg: number, conditions: Conditions): boolean {
  if (freeFall(mass_kg, conditions) > MOST_COUNT_S) return false;
  return countOf(mass_kg, conditions, MOST_COUNT_S) !== null;
}

function setupOf(mass_kg: number, { depth_m, temperature_C, outfit }: Conditions) {
  const setup = waterWith({ depth_m, temperature_C, mass_kg, start: castOut(CAST_M) });
  return parseSetup(outfit ? withOutfitGear(setup, outfit) : setup);
}

/** Of the bait alone, s. */
function freeFall(mass_kg: number, conditions: Conditions): number {
  const setup = setupOf(mass_kg, conditions);
  const weight_N = mass_kg * GRAVITY_M_S2 * submergedFraction(setup);
  const density = waterDensity(conditions.temperature_C);
  return conditions.depth_m / fallSpeed(weight_N, setup.bait.drag_area_m2, density);
}

/** From the splash to the bottom, s; null when that takes longer than `most_s`. */
function countOf(mass_kg: number, conditions: Conditions, most_s: number): number | null {
  const { events } = simulate({
    ...setupOf(mass_kg, conditions),
    move: still,
    hold_s: most_s,
    until: 'bottom'
  });
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? null;
}
