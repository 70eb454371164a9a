import type { Assignment } from '$lib/wire';
import type { Challenge } from '$lib/scoring';
import type { Told } from './shelf';

/** What a phone hears when it enters. */
export interface Answered {
  client: { note: string };
  assignment: { task: Assignment; closed_at: string | null };
}

/**
 * What the guide says now. Challenges that say the same as before stay the same objects: water that is
 * open is laid out anew for another one, and a try in it would be lost to every answer that comes.
 */
export function toldFrom(before: Told | null, { client, assignment }: Answered): Told {
  const { task, closed_at } = assignment;
  return {
    ...task,
    challenges: task.challenges.map((challenge) => asBefore(before, challenge)),
    isClosed: closed_at !== null,
    answer: client.note
  };
}

function asBefore(before: Told | null, challenge: Challenge): Challenge {
  const known = before?.challenges.find(({ id }) => id === challenge.id);
  return known && JSON.stringify(known) === JSON.stringify(challenge) ? known : challenge;
}
