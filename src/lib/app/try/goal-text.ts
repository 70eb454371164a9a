import {
  formatLength,
  formatShare,
  formatSpeed,
  formatSpeedBeside,
  isRetrieveGoal,
  wordsOf,
  type DragGoal,
  type Goal,
  type GoalGrade,
  type Units
} from '$lib/scoring';

/** A row of the marks table, in the learner's units. */
export interface GoalText {
  name: string;
  asked: string;
  reached: string;
}

/** What a goal asks for and what the try reached of it. */
export function goalText(
  { goal, value }: Pick<GoalGrade, 'goal' | 'value'>,
  units: Units
): GoalText {
  if (isRetrieveGoal(goal)) {
    const { name, asked, reached } = wordsOf(goal, value, units);
    return { name, asked, reached };
  }
  return { ...askedFor(goal, units), reached: inItsUnit(goal, value, units) };
}

function askedFor(goal: DragGoal, units: Units): Omit<GoalText, 'reached'> {
  const length = (m: number) => formatLength(m, units);
  switch (goal.kind) {
    case 'travel':
      return {
        name: 'Travel',
        asked: `${length(goal.target_m)}, give or take ${length(goal.band_m)}`
      };
    case 'peak_height':
      return { name: 'Height', asked: `at most ${length(goal.most_m)} off the bottom` };
    case 'contact':
      return { name: 'Contact', asked: `at least ${formatShare(goal.least)} of its way` };
    case 'speed':
      return { name: 'Top speed', asked: `at most ${formatSpeed(goal.most_m_s, units)}` };
    case 'hops': {
      const [low, high] = goal.height_m.map(length);
      return { name: 'Hops', asked: `${goal.count}, ${low} to ${high} high` };
    }
    case 'stones':
      return { name: 'Stones touched', asked: `${goal.touched.length}` };
  }
}

function inItsUnit(goal: Goal, value: number, units: Units): string {
  const { kind } = goal;
  if (kind === 'travel' || kind === 'peak_height') return formatLength(value, units);
  if (kind === 'contact') return formatShare(value);
  return kind === 'speed' ? formatSpeedBeside(value, goal.most_m_s, units) : `${value}`;
}
