import {
  describeTry,
  figureOf,
  shownMarks,
  tipTravel,
  wordsOf,
  type Challenge,
  type Correction,
  type GradedRun,
  type Units
} from '../scoring';

const UNITS: readonly Units[] = ['imperial', 'metric'];

/** What of one try's result contradicts itself: its marks, the limits beside them, and its advice. */
export function resultFaults(
  challenge: Challenge,
  graded: GradedRun,
  correction: Correction | null
): string[] {
  return [
    ...figureFaults(challenge, graded),
    ...UNITS.flatMap((units) => [
      ...limitFaults(graded, units),
      ...adviceFaults(challenge, graded, units, correction)
    ])
  ];
}

/** A figure within its limit gets full marks, one outside never does, and its words say the same. */
function limitFaults({ grade }: GradedRun, units: Units): string[] {
  return shownMarks(grade).flatMap(({ goal, value, met, marks, outOf }) => {
    const { name, asked, reached } = wordsOf(goal, value, units, met);
    const said = `${name} ${asked}: ${reached}`;
    const limits = asked.split(/,? to |, |at least |at most |within | of /);
    return [
      (met === 1) === (marks === outOf) ? '' : `"${said}" gets ${marks} of ${outOf}`,
      met < 1 && limits.includes(reached) ? `"${said}" is its limit, and was missed` : '',
      met === 1 && /^just (over|under)/.test(reached) ? `"${said}" is outside, and was met` : ''
    ].filter(Boolean);
  });
}

/** What lies outside on the axis of a task's tries has not met its goal; inside, something else may be amiss. */
function figureFaults(challenge: Challenge, { grade }: GradedRun): string[] {
  const { goal, asked, name } = figureOf(challenge);
  const met = grade.goals.find((one) => one.goal === goal)?.met;
  if (!asked || grade.figure === null || met === undefined) return [];
  const [low, high] = asked;
  const isInside = grade.figure >= low && grade.figure <= (high ?? Infinity);
  if (isInside || met < 1) return [];
  return [`${name}: ${grade.figure} of ${low} to ${high ?? 'more'} meets it by ${met}`];
}

/** A give or take that holds the way that has just failed would name that way again. */
function adviceFaults(
  challenge: Challenge,
  graded: GradedRun,
  units: Units,
  correction: Correction | null
): string[] {
  const { change } = describeTry(challenge, graded, units, correction);
  if (graded.grade.passed || !correction || !change.includes('give or take')) return [];
  const off_m = Math.abs(tipTravel(graded.result) - correction.tipTravel_m);
  return off_m <= correction.band_m ? [`"${change}" holds the way that failed`] : [];
}

/** Marks of a figure never rise as tries come out farther from what was asked, on either side of it. */
export function missFaults(challenge: Challenge, all: readonly GradedRun[]): string[] {
  const { goal, asked, name } = figureOf(challenge);
  // Of several hops or rests each earns by itself: the one that is shown does not say it all.
  if (!asked || !goal || 'count' in goal) return [];
  const [low, high] = asked;
  const tries = all.flatMap(({ grade }) => {
    const met = grade.goals.find((one) => one.goal === goal)?.met;
    return grade.figure === null || met === undefined ? [] : [{ at: grade.figure, met }];
  });
  const below = tries.filter(({ at }) => at < low).sort((a, b) => b.at - a.at);
  const above = tries.filter(({ at }) => at > (high ?? Infinity)).sort((a, b) => a.at - b.at);
  return [below, above].flatMap((side) =>
    side
      .filter(({ met }, i) => i > 0 && met > side[i - 1].met)
      .map(({ at, met }) => `${name}: ${at} earns ${met}, more than a nearer miss`)
  );
}
