import { parseScenario, ScenarioError, simulate, type ScenarioInput } from '../../model';
import { bandOf, contactWhileMoving, type Unknowns } from '../../scoring';

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

/** Figures of a run, and how far each may be off: give or take. */
export interface FiguresMade {
  figures: RunFigures;
  half: RunFigures | null;
}

const READ: { [Name in keyof RunFigures]: (scenario: ScenarioInput) => number } = {
  travel_m: (scenario) => simulate(scenario).travel_m,
  peak_height_m: (scenario) => simulate(scenario).peak_height_m,
  contact: (scenario) => contactWhileMoving(simulate(scenario))
};
const NAMES = Object.keys(READ) as (keyof RunFigures)[];

/** Of each scenario; null for one that cannot be, as where the line is too short. */
export function figuresOfRuns({ scenarios, unknowns }: FiguresWanted): (FiguresMade | null)[] {
  return scenarios.map((input) => {
    try {
      const scenario = parseScenario(input);
      const each = (of: (name: keyof RunFigures) => number) =>
        Object.fromEntries(NAMES.map((name) => [name, of(name)])) as unknown as RunFigures;
      return {
        figures: each((name) => READ[name](scenario)),
        half: unknowns ? each((name) => bandOf(scenario, READ[name], unknowns).half) : null
      };
    } catch (error) {
      if (error instanceof ScenarioError) return null;
      throw error;
    }
  });
}
