import { contactLimit_s } from '../../course/contact-limit';
import { parseScenario, ScenarioError, type Scenario, type ScenarioInput } from '../../model';
import { bandsOf, type Unknowns } from '../../scoring';
import { QUICKEST_S } from '../quickest-drag';

export interface LimitsWanted {
  /** Each a drag of the tip by so much; its own time is not looked at. */
  drags: readonly ScenarioInput[];
  tip_m: number;
  /** Coarse for a first picture, fine for the one that stays. */
  grain: keyof typeof TIMES_S;
  unknowns?: Unknowns;
}

/** How fast the tip may go so that the bait stays down, m/s; 0 where no pace that was tried does it. */
export interface LimitMade {
  pace_m_s: number;
  ends: readonly [number, number] | null;
}

/** Times that a drag is tried in end slower than anybody drags, s. */
const SLOWEST_S = 10;
const TIMES_S = { coarse: timesFor(7), fine: timesFor(31) };

/** One less than a power of two: halving tries each depth of the tree once. */
function timesFor(count: number): number[] {
  const ratio = SLOWEST_S / QUICKEST_S;
  return Array.from({ length: count }, (_, i) => QUICKEST_S * ratio ** (i / (count - 1)));
}

/** Of each drag; null for one that cannot be made. */
export function contactLimits(wanted: LimitsWanted): (LimitMade | null)[] {
  const { drags, tip_m, grain, unknowns } = wanted;
  const read = (scenario: Scenario) => {
    const shortest_s = contactLimit_s(scenario, TIMES_S[grain]);
    return { pace_m_s: shortest_s === undefined ? 0 : tip_m / shortest_s };
  };
  return drags.map((input) => {
    try {
      const scenario = parseScenario(input);
      if (!unknowns) return { ...read(scenario), ends: null };
      const { nominal, ends } = bandsOf(scenario, read, unknowns).pace_m_s;
      return { pace_m_s: nominal, ends };
    } catch (error) {
      if (error instanceof ScenarioError) return null;
      throw error;
    }
  });
}
