import type { Lesson } from '../course';

/** One thing that a room does together. */
export type Round =
  | { kind: 'talk'; title: string; says: string[]; minutes: number }
  /** The question that a lesson asks before it shows anything. */
  | { kind: 'predict'; lesson: string; section: number; minutes: number }
  | { kind: 'try'; lesson: string; challenge: string; minutes: number };

export const PLAN_MINUTES = [45, 90] as const;
export type PlanMinutes = (typeof PLAN_MINUTES)[number];

/** How long a round takes, by hand: a vote, a talk with the neighbour, a second vote; ten tries. */
const MINUTES = { predict: 7, try: 8, field: 6 };

const welcome: Round = {
  kind: 'talk',
  title: 'Before we start',
  says: [
    'Nobody is ranked, and no name is asked.',
    'Answer alone first. Then talk.',
    'Who has no phone shows a hand.'
  ],
  minutes: 3
};

/**
 * What to do in so many minutes: of one lesson after the other the questions, then the challenges,
 * each lesson closed with its drill for the water. Predict, try, take it along.
 */
export function planFor(minutes: PlanMinutes, lessons: readonly Lesson[]): Round[] {
  const plan: Round[] = [welcome];
  let left = minutes - welcome.minutes;
  for (const lesson of lessons) {
    for (const round of roundsOf(lesson)) {
      if (round.minutes > left) return plan;
      plan.push(round);
      left -= round.minutes;
    }
  }
  return plan;
}

function roundsOf(lesson: Lesson): Round[] {
  const { id } = lesson;
  const asked = lesson.sections.flatMap((section, i): Round[] =>
    section.kind === 'predict'
      ? [{ kind: 'predict', lesson: id, section: i, minutes: MINUTES.predict }]
      : []
  );
  const tried = lesson.challenges.map((challenge): Round => {
    return { kind: 'try', lesson: id, challenge: challenge.id, minutes: MINUTES.try };
  });
  const drill = lesson.sections.flatMap((section): Round[] =>
    section.kind === 'field'
      ? [{ kind: 'talk', title: section.title, says: section.steps, minutes: MINUTES.field }]
      : []
  );
  return [...asked, ...tried, ...drill];
}
