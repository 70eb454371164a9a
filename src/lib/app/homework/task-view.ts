import type { ClientView, HomeworkView } from '$lib/wire';
import type { Challenge } from '$lib/scoring';
import type { TaskView } from './homework-store';

/** What a phone hears when it enters. */
type Heard = { client: Pick<ClientView['client'], 'note'> } & { assignment: HomeworkView };

/**
 * What the guide says now. Challenges that say the same as before stay the same objects: water that is
 * open is laid out anew for another one, and a try in it would be lost to every answer that comes.
 */
export function taskViewFrom(before: TaskView | null, { client, assignment }: Heard): TaskView {
  const { task, closed_at } = assignment;
  return {
    ...task,
    challenges: task.challenges.map((challenge) => asBefore(before, challenge)),
    isClosed: closed_at !== null,
    answer: client.note
  };
}

function asBefore(before: TaskView | null, challenge: Challenge): Challenge {
  const known = before?.challenges.find(({ id }) => id === challenge.id);
  return known && JSON.stringify(known) === JSON.stringify(challenge) ? known : challenge;
}
