import { wordsOf, type Challenge, type Units } from '$lib/scoring';
import { isInAnyGear } from '$lib/practice';
import type { HomeworkResult } from '$lib/wire';

/**
 * What a guide should know of a result that came by a link before reading its marks: nothing in a link is
 * sealed, so goals may be looser than the course's, and one good try may stand there twice.
 * @param course every challenge as the course has it
 */
export function packetFindings(
  { assignment, tries }: Pick<HomeworkResult, 'assignment' | 'tries'>,
  course: readonly Challenge[],
  units: Units
): string[] {
  return [
    ...assignment.challenges.flatMap((challenge) => goalFindings(challenge, course, units)),
    ...assignment.challenges.flatMap(({ title }, i) => {
      const own = tries
        .filter((one) => one.challenge === i)
        .map(({ input }) => JSON.stringify(input));
      const again = own.length - new Set(own).size;
      if (again === 0) return [];
      return [
        `“${title}”: ${again} of ${own.length} tries ${again === 1 ? 'is' : 'are'} the exact same move as another.`
      ];
    })
  ];
}

function goalFindings(asked: Challenge, course: readonly Challenge[], units: Units): string[] {
  const known = course.find(({ id }) => isInAnyGear(asked.id, id));
  if (!known) return [`“${asked.title}” is no challenge of this course.`];
  if (JSON.stringify(known.goals) === JSON.stringify(asked.goals)) return [];
  return [
    `“${asked.title}” asks for something different from the course: ${goalsText(asked, units)}. The course asks for ${goalsText(known, units)}.`
  ];
}

/** "Travel 11 in to 1 ft 1 in, contact 95 % or more" */
function goalsText({ goals }: Challenge, units: Units): string {
  return goals
    .map((goal) => {
      const { name, asked } = wordsOf(goal, 0, units);
      return `${name.toLowerCase()} ${asked}`;
    })
    .join(', ');
}
