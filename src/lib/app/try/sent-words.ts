import { travelOf } from '$lib/practice';
import { taskStepsOf } from '$lib/sandbox';
import {
  describeTry,
  drawnOf,
  formatLength,
  formatWay,
  moveMarks,
  ROD_BUTTONS,
  type Challenge,
  type Goal,
  type Grade,
  type Units
} from '$lib/scoring';
import type { TryRun } from './try-runs';

/** What the one who gets it is asked: nobody beats all there is to get. */
export const asksOf = ({ grade }: Pick<TryRun, 'grade'>) =>
  moveMarks(grade) < 100 ? 'Can you beat it?' : 'Can you do it, too?';

/** What was asked and what came of it, a sentence each; of a task that asks no travel, its name first. */
export function toldByHand({ challenge, result, grade }: TryRun, units: Units): string[] {
  const travel = travelOf(challenge);
  return travel
    ? [
        `I wanted ${formatLength(travel.target_m, units)}.`,
        wentWords({ challenge, result, grade }, units)
      ]
    : [`${challenge.title}.`, bySender(describeTry(challenge, { result, grade }, units, null).did)];
}

/** What a way that is as long as asked was not, by what it cost the marks for. */
const BUT: Partial<Record<Goal['kind'], string>> = {
  contact: ', but it left bottom',
  speed: ', but too fast',
  tip_speed: ', but too fast'
};

/** Why a way that was right got so few marks; '' where the way tells it, or there is no one word for it. */
function butWords({ goals }: Pick<Grade, 'goals'>): string {
  const travel = goals.find(({ goal }) => goal.kind === 'travel');
  if (travel?.met !== 1) return '';
  return goals.flatMap(({ goal, met }) => (met < 1 ? (BUT[goal.kind] ?? []) : []))[0] ?? '';
}

/** Told beside its limits, as the result tells it: a miss by half an inch is none of a hit. */
function wentWords(
  { challenge, result, grade }: Pick<TryRun, 'challenge' | 'result' | 'grade'>,
  units: Units
): string {
  const { travel_m: limits } = drawnOf(challenge.goals);
  const went = limits
    ? formatWay(result.travel_m, limits, units)
    : formatLength(result.travel_m, units);
  return `The jig went ${went}${butWords(grade)}.`;
}

/** What was said to who made the try, as they say it on. */
function bySender(did: string): string {
  return did.replace(/\bfrom you\b/g, 'from me').replace(/\byou\b/gi, 'I');
}

/** "I wanted 1 ft. The jig went 1 ft 9 in. 40 of 100. Can you beat it?" */
export function sendWords(graded: TryRun, units: Units): string {
  return [...toldByHand(graded, units), `${moveMarks(graded.grade)} of 100.`, asksOf(graded)].join(
    ' '
  );
}

/** What the one who opens the link is told: what there is to beat. */
export function sentWords({ challenge, result, grade }: TryRun, units: Units): string {
  const travel = travelOf(challenge);
  const marks = `${moveMarks(grade)} of 100.`;
  return travel
    ? `Wanted: ${formatLength(travel.target_m, units)}. ${wentWords({ challenge, result, grade }, units)} ${marks}`
    : `To beat: ${marks}`;
}

/** How the rod is taken, for who never saw the page: by the button that its task holds first. */
export function takeWords(challenge: Challenge): string {
  const first = taskStepsOf(challenge).find(({ does }) => does === 'up' || does === 'down');
  const button = ROD_BUTTONS[challenge.plane][first?.does === 'down' ? -1 : 1];
  return `Take the rod, then drag it or hold ${button}.`;
}

/**
 * Beside the marks of one's own try, `own`, in its result: the question was whether one can beat it. A try
 * that is not counted has none.
 */
export function sentMarks({ grade }: Pick<TryRun, 'grade'>, own: number | undefined): string {
  const sent = moveMarks(grade);
  const got = `The one you were sent got ${sent}`;
  if (own === undefined || own < sent) return `${got}.`;
  return own > sent ? `${got}: you beat it.` : `${got}, too.`;
}

/** How the best of one's own tries stands beside it; '' before there is one. */
export function beatenWords({ grade }: Pick<TryRun, 'grade'>, own: readonly number[]): string {
  if (own.length === 0) return '';
  const [best, sent] = [Math.max(...own), moveMarks(grade)];
  if (best > sent) return `You: ${best}. You beat it.`;
  return best === sent ? `You: ${best}. Even.` : `You: ${best}. Not yet.`;
}
