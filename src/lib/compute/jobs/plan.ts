import { PLAIN_MOVES } from '../../course/plan';
import { parseScenario, ScenarioError, type SetupInput } from '../../model';
import { bandsOf, formatWeight, type Units } from '../../scoring';
import type { OutfitGear, PlanAsked, PlannedMove, PlannedWeight } from '../../wire';
import { LIMIT_TIP } from './card';
import { daySetup, rounded, WIND_M_S, windsOf, workedAt_m } from './day-setup';
import { fallTimes } from './falls';
import { movedIn, readingsOf } from './moved';
import { quickestCount } from './stays-down';

export interface DayWanted {
  asked: PlanAsked;
  /** Left out, the course's own with a jig of `mass_kg`. */
  gear?: OutfitGear;
  mass_kg?: number;
  units: Units;
}

/** Where the limit is looked for, as parts of the way out: it falls as the jig comes near. */
const OUT_PARTS = [1, 0.4];

/**
 * What one outfit does in the day's water. The wind blows from behind or from ahead, whichever lifts
 * sooner. Throws ScenarioError for gear or water that cannot be run.
 */
export function weightForPlan(wanted: DayWanted): PlannedWeight {
  const { asked, gear, units } = wanted;
  const unknowns = gear?.spread;
  const setup = setupFor(wanted, asked.out_m, WIND_M_S[asked.wind]);
  const { mass_kg } = setup.bait;
  const [{ fall_s, half_s }] = fallTimes({
    setup,
    depths_m: [asked.depth_m],
    unknowns: unknowns ?? 'drag'
  });
  const out_m = OUT_PARTS.map((part) => part * asked.out_m);
  const count_s = out_m.map((m) =>
    quickestCount(
      windsOf(asked.wind).map((wind_m_s) => setupFor(wanted, m, wind_m_s)),
      LIMIT_TIP[units],
      unknowns
    )
  );
  return {
    ...(gear && { outfit: gear.outfit }),
    name: gear?.name ?? formatWeight(mass_kg, units),
    mass_kg,
    fall: [rounded(fall_s, 1), rounded(half_s, 1)],
    limit: { tip_m: LIMIT_TIP[units], out_m: out_m.map((m) => rounded(m)), count_s }
  };
}

/** The plain moves of these retrieves, a third of the way in; null readings where the rod cannot do one. */
export function movesForPlan(
  wanted: DayWanted & { retrieves: readonly string[] },
  tell: (share: number) => void = () => {}
): PlannedMove[] {
  const { asked, retrieves } = wanted;
  const setup = setupFor(wanted, workedAt_m(asked.out_m), WIND_M_S[asked.wind]);
  const plain = PLAIN_MOVES.filter(({ retrieve }) => retrieves.includes(retrieve));
  return plain.map((one, i) => {
    tell(i / plain.length);
    return moveFor(one, setup, wanted);
  });
}

function moveFor(
  { retrieve, run }: (typeof PLAIN_MOVES)[number],
  given: SetupInput,
  { gear }: DayWanted
): PlannedMove {
  try {
    const { setup, move, hold_s } = run(given);
    const { travel_m, peak_height_m, tip_m } = bandsOf(
      parseScenario({ ...setup, move, hold_s }),
      movedIn,
      gear?.spread
    );
    return { retrieve, ...readingsOf({ travel_m, peak_height_m, tip_m }) };
  } catch (error) {
    if (!(error instanceof ScenarioError || error instanceof RangeError)) throw error;
    return { retrieve, came: null, high: null };
  }
}

const setupFor = (
  { asked, gear, mass_kg }: DayWanted,
  out_m: number,
  wind_m_s: number
): SetupInput => daySetup({ ...asked, gear, mass_kg, out_m, wind_m_s });
