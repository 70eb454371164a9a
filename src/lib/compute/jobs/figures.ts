import {
  parseScenario,
  ScenarioError,
  simulate,
  type Scenario,
  type ScenarioInput
} from '../../model';
import { bandsOf, contactWhileMoving, type Unknowns } from '../../scoring';

/** What is read off one run. */
export interface RunFigures {
  travel_m: number;
  peak_height_m: number;
  /** Share of the time it moved that it was on the bottom, 0–1. */
  contact: number;
}

export interface FiguresWanted {
  scenarios: readonly ScenarioInput[];
  /** What is not known of them; left out, no bands are worked out. */
  unknowns?: Unknowns;
}

/** Figures of a run, and where they may lie: [low, high]. */
export interface FiguresMade {
  figures: RunFigures;
  ends: Record<keyof RunFigures, readonly [number, number]> | null;
}

function read(scenario: Scenario): RunFigures {
  const result = simulate(scenario);
  const { travel_m, peak_height_m } = result;
  return { travel_m, peak_height_m, contact: contactWhileMoving(result) };
}

/** Of each scenario; null for one that cannot be, as where the line is too short. */
export function figuresOfRuns({ scenarios, unknowns }: FiguresWanted): (FiguresMade | null)[] {
  return scenarios.map((input) => {
    try {
      const scenario = parseScenario(input);
      if (!unknowns) return { figures: read(scenario), ends: null };
      const { travel_m, peak_height_m, contact } = bandsOf(scenario, read, unknowns);
      return {
        figures: {
          travel_m: travel_m.nominal,
          peak_height_m: peak_height_m.nominal,
          contact: contact.nominal
        },
        ends: {
          travel_m: travel_m.ends,
          peak_height_m: peak_height_m.ends,
          contact: contact.ends
        }
      };
    } catch (error) {
      if (error instanceof ScenarioError) return null;
      throw error;
    }
  });
}
