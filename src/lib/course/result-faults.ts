import { costsOf, figureOf, wordsOf, type Challenge, type GradedRun, type Units } from '../scoring';

const UNITS: readonly Units[] = ['imperial', 'metric'];

/** What of one try's result contradicts itself: its marks and the limits beside them. */
export function resultFaults(challenge: Challenge, graded: GradedRun): string[] {
  return [
    ...figureFaults(challenge, graded),
    ...UNITS.flatMap((units) => limitFaults(graded, units))
  ];
}

/** A figure within its limit gets full marks, one outside never does, and its words say the same. */
function limitFaults({ grade }: GradedRun, units: Units): string[] {
  return costsOf(grade).flatMap(({ goal, value, met, cost, most }) => {
    const { name, asked, reached } = wordsOf(goal, value, units, met);
    const said = `${name} ${asked}: ${reached}`;
    const limits = asked.split(/,? to |, |at least |at most |within | of /);
    return [
      (met === 1) === (cost === 0) ? '' : `"${said}" costs ${cost} of ${most}`,
      cost <= most ? '' : `"${said}" costs ${cost}, at most ${most}`,
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
