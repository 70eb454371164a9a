import { SOURCES } from '../course/items';
import type { Assignment, ClientStanding } from '../wire';
import type { Homework } from './assignments';
import { clientsOf } from './clients';
import type { Db } from './store';

/** So many are sent by one phone of one part, by the part's name. */
type Counts = ReadonlyMap<string, number>;

/**
 * Where everybody stands, without what they sent: of hundreds of clients that is megabytes of rod
 * input. Lessons, challenges and questions have no name in common, see the test.
 */
export async function standingsOf(db: Db, { id, task }: Homework): Promise<ClientStanding[]> {
  const clients = await clientsOf(db, id);
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'part'])
    .select((of) => of.fn.countAll().as('count'))
    .where('parent', '=', id)
    .groupBy(['scope', 'part'])
    .execute();
  const sent = new Map(clients.map((client) => [client.id, new Map<string, number>()]));
  for (const { scope, part, count } of rows) sent.get(scope)?.set(part, Number(count));
  return clients.map(({ id, nickname, joined_at }) => {
    const counts = sent.get(id) ?? new Map();
    const parts = partsDone(task, counts);
    const done = parts.filter(Boolean).length;
    return { id, nickname, joined_at, done, parts: parts.length, hasBegun: counts.size > 0 };
  });
}

function partsDone(task: Assignment, counts: Counts): boolean[] {
  const of = (part: string) => counts.get(part) ?? 0;
  const about = (objective: string) =>
    SOURCES.filter((one) => one.objective === objective).reduce((n, one) => n + of(one.item), 0);
  return [
    ...task.lessons.map((lesson) => of(lesson) > 0),
    ...task.challenges.map(({ id }) => of(id) >= task.tries),
    ...task.objectives.map((objective) => about(objective) >= task.questions)
  ];
}
