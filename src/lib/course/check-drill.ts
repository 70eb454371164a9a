import type { Challenge } from '../scoring';
import { checkChallenge, type ContentReport } from './check';
import { challengesOf, type Drill } from './drills';
import { PHASES } from './phases';

/** The seed under which a drill's sittings are looked at. */
const SEED = 1;
/** Rough hands for each task; a drill has many tasks alike. */
const HANDS = 2;

export interface DrillReport {
  id: string;
  title: string;
  lesson: string;
  /** One of each task in each phase. Advice is not looked for here: it takes as long as all the rest. */
  challenges: Omit<ContentReport, 'advice'>[];
  faults: string[];
}

/** Runs every task of a drill in every phase that has it. */
export function checkDrill({ id, title, lesson }: Drill): DrillReport {
  const faults: string[] = [];
  const marksOf = new Map<string, Omit<ContentReport, 'advice'>>();
  const challenges = PHASES.flatMap((phase) =>
    onePerTask(challengesOf({ drill: id, phase, seed: SEED })).map((challenge) => {
      const task = taskOf(challenge);
      const known = marksOf.get(task) ?? checkChallenge(challenge, faults, HANDS);
      marksOf.set(task, known);
      return { ...known, id: challenge.id, phase };
    })
  );
  return { id, title, lesson, challenges, faults };
}

function onePerTask(challenges: readonly Challenge[]): Challenge[] {
  return [...new Map(challenges.map((challenge) => [taskOf(challenge), challenge])).values()];
}

/** What is asked and in which water; the same in all phases. */
function taskOf({ setup, goals }: Challenge): string {
  return JSON.stringify({ setup, goals });
}
