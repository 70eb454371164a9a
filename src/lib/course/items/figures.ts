import { simulateScenario, type Result, type Scenario } from '../../model';
import { handRun, tipTravel } from '../../scoring';
import { MEASURED_BY } from './measured-by';
import { SIGNS, type MeasureName, type SignName } from './measures';

/** What is kept of a run: all that items ask of it, and none of its trace. */
export type Figures = Readonly<Record<MeasureName, number>> & {
  readonly signs: ReadonlySet<SignName>;
  /** How far the tip went, m. */
  readonly tip_m: number;
};

/** Some thirty bytes of figures and half a kilobyte of name each: a few megabytes at most. */
const MOST_KEPT = 10_000;
const kept = new Map<string, Figures>();

/**
 * The model's figures of this very scenario. The model is a pure function, so a run that was made
 * once is never made again while it is kept.
 */
export function figuresOf(scenario: Scenario): Figures {
  const name = JSON.stringify(scenario);
  const known = kept.get(name);
  if (known) return known;
  const figures = read(handRun({ setup: scenario }, simulateScenario(scenario)));
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(name, figures);
  return figures;
}

function read(result: Result): Figures {
  const values = Object.entries(MEASURED_BY).map(([name, of]) => [name, of(result)]);
  const names = Object.keys(SIGNS) as SignName[];
  const signs = new Set(names.filter((name) => SIGNS[name](result)));
  const tip_m = tipTravel(result);
  return { ...(Object.fromEntries(values) as Record<MeasureName, number>), signs, tip_m };
}
