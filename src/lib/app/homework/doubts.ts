import { ScenarioError } from '$lib/model';
import { travelOf } from '$lib/practice';
import { gradeTry, needsSeveralMoves, solveCorrection, type Challenge } from '$lib/scoring';
import { chosenIn, type Draft } from './draft';

/** A challenge that the gear chosen for it may spoil: none can do it, or nobody knows. */
export interface Doubt {
  title: string;
  kind: 'impossible' | 'unknown';
}

/** What is doubtful in a draft: of the challenges with a distance those in another gear than the lesson's. */
export function doubtsOf(draft: Draft): Doubt[] {
  return chosenIn(draft)
    .map(({ challenge, setup }) => (setup ? { ...challenge, setup } : null))
    .filter((own) => own !== null)
    .filter((own) => travelOf(own))
    .flatMap((own) => {
      const kind = doubtOf(own);
      return kind ? [{ title: own.title, kind }] : [];
    });
}

/** One move is found where there is one; of several the lesson's own tell that it can be done, or nothing. */
function doubtOf(challenge: Challenge): Doubt['kind'] | null {
  try {
    if (needsSeveralMoves(challenge)) return isDoneAsInLesson(challenge) ? null : 'unknown';
    return solveCorrection(challenge) ? null : 'impossible';
  } catch (error) {
    // A line that finds no rest in that gear: the model begins no try.
    if (error instanceof ScenarioError) return 'impossible';
    throw error;
  }
}

function isDoneAsInLesson(challenge: Challenge): boolean {
  return gradeTry(challenge, challenge.reference).grade.passed;
}

/** A sentence for each kind of doubt. */
export function doubtTexts(doubts: readonly Doubt[]): string[] {
  const titles = (kind: Doubt['kind']) =>
    doubts.filter((one) => one.kind === kind).map(({ title }) => `“${title}”`);
  const [impossible, unknown] = [titles('impossible'), titles('unknown')];
  return [
    ...(impossible.length > 0
      ? [
          `With your gear no single move of the rod does ${impossible.join(', ')}: change the gear, or leave it as a riddle.`
        ]
      : []),
    ...(unknown.length > 0
      ? [
          `Whether your gear can do ${unknown.join(', ')} is not known: the lesson’s own moves do not do it there. Try it first, or change the gear.`
        ]
      : [])
  ];
}
