import { fathomley } from '$lib/course/lessons/fathomley';
import { parseSetup } from '$lib/model';
import type { Assignment, HomeworkPhase } from '$lib/wire';
import { gearOf } from '$lib/sandbox/gear';
import {
  formatDepth,
  formatLength,
  formatWeight,
  inUnits,
  type Challenge,
  type Units
} from '$lib/scoring';
import { dayText, isLate } from '$lib/shell';

/** "5/8 oz in 11 ft of water", and the rod where it is another than all lessons have */
export function gearText({ setup }: Pick<Challenge, 'setup'>, units: Units): string {
  const own = parseSetup(setup);
  const { bait, water, rod } = own;
  const text = `${formatWeight(bait.mass_kg, units)} in ${formatDepth(water.depth_m, units)} of water`;
  if (rod.length_m === fathomley.rod.length_m) return text;
  return `${text}, a rod of ${formatLength(gearOf(own).rod_m, units)}`;
}

/** The task, after as much of its gear and water as its own words do not say. */
export function taskText(challenge: Pick<Challenge, 'setup' | 'ask'>, units: Units): string {
  const ask = inUnits(challenge.ask, units);
  const { bait, water } = parseSetup(challenge.setup);
  const depth = formatDepth(water.depth_m, units);
  if (!ask.includes(formatWeight(bait.mass_kg, units)))
    return `${gearText(challenge, units)}. ${ask}`;
  return ask.includes(depth) ? ask : `${depth} of water. ${ask}`;
}

type Counts = Pick<Assignment, 'challenges' | 'objectives' | 'tries' | 'questions' | 'phase'>;

/** What a client sees of the jig, told to one. */
const SEES: Record<HomeworkPhase, string> = {
  seen: 'You see the jig.',
  half_seen: 'You see the jig on every other try.',
  unseen: 'The jig is hidden.'
};

/** "2 tries at each task. The jig is hidden. 4 questions of each kind." Only of what there is. */
export function countsText({ challenges, objectives, tries, questions, phase }: Counts): string {
  const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;
  const said = [
    ...(challenges.length > 0
      ? [
          `${many(tries, 'try', 'tries')}${challenges.length > 1 ? ' at each task' : ''}.`,
          SEES[phase]
        ]
      : []),
    ...(objectives.length > 0
      ? [
          `${many(questions, 'question', 'questions')}${objectives.length > 1 ? ' of each kind' : ''}.`
        ]
      : [])
  ];
  return said.join(' ');
}

/** "From Reedmere Guiding, by May 9, 2031" */
export function headText(
  { from, due }: Pick<Assignment, 'from' | 'due'>,
  isClosed = false,
  /** ISO time, to say that the day has passed; null says nothing of it. */
  now: string | null = null
): string {
  const late = now !== null && isLate(now, due) ? ': it’s late now' : '';
  const until = isClosed ? ', closed by your guide' : due ? `, by ${dayText(due)}${late}` : '';
  return `${from ? `From ${from}` : 'Homework'}${until}`;
}
