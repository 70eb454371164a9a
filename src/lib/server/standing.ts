import { sql } from 'kysely';
import { questionsAbout, SOURCES } from '../course/items';
import {
  askedParts,
  homeworkSubmission,
  type Assignment,
  type ClientStanding,
  type PartCount
} from '../wire';
import type { Homework } from './assignments';
import { clientsOf } from './clients';
import type { Db } from './store';
import { readStored } from './stored';

/** What one phone sent of one part: how much, and how much of it was passed or right. */
interface Sent {
  made: number;
  good: number;
  /** Whether the last of it was. */
  endsWell: boolean;
}

const NOTHING: Sent = { made: 0, good: 0, endsWell: false };

/**
 * How a reply that says so reads as JSON, in every store alike; a quotation mark within its words has a
 * stroke before it, and so is none of these.
 */
const isGood = sql`(reply like ${'%"passed":true%'} or reply like ${'%"right":true%'})`;

/**
 * Where everybody stands, without what they sent: of hundreds of clients that is megabytes of rod
 * input. Lessons, challenges and questions have no name in common, see the test.
 */
export async function standingsOf(db: Db, { id, task }: Homework): Promise<ClientStanding[]> {
  const clients = await clientsOf(db, id);
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'part'])
    .select((of) => of.fn.countAll().as('made'))
    .select([
      sql`sum(case when ${isGood} then 1 else 0 end)`.as('good'),
      sql<string>`coalesce(max(case when ${isGood} then received_at end), '')`.as('lastGood'),
      sql<string>`coalesce(max(case when ${isGood} then null else received_at end), '')`.as(
        'lastBad'
      )
    ])
    .where('parent', '=', id)
    .groupBy(['scope', 'part'])
    .execute();
  const words = await lastWords(db, id);
  const sent = new Map(clients.map((client) => [client.id, new Map<string, Sent>()]));
  for (const { scope, part, made, good, lastGood, lastBad } of rows) {
    const endsWell = lastGood > lastBad;
    sent.get(scope)?.set(part, { made: Number(made), good: Number(good), endsWell });
  }
  return clients.map(({ id, nickname, joined_at }) => {
    const all = sent.get(id) ?? new Map<string, Sent>();
    const counts = countsOf(task, all);
    const done = counts.filter(({ made, of }) => made >= of).length;
    const hasBegun = all.size > 0;
    const word = words.get(id) ?? null;
    return { id, nickname, joined_at, done, parts: counts.length, hasBegun, counts, word };
  });
}

function countsOf(task: Assignment, sent: ReadonlyMap<string, Sent>): PartCount[] {
  const of = (part: string) => sent.get(part) ?? NOTHING;
  const once = (part: string) => ({ made: Math.min(1, of(part).made), good: null, of: 1 });
  const about = (objective: string) =>
    SOURCES.filter((one) => one.objective === objective)
      .map(({ item }) => of(item))
      .reduce((sum, { made, good }) => ({ made: sum.made + made, good: sum.good + good }), {
        made: 0,
        good: 0
      });
  return askedParts(task).map(({ kind, id }) => {
    if (kind === 'challenge') return { ...of(id), of: task.tries };
    if (kind === 'lesson' || kind === 'lawn') return once(id);
    return { ...about(id), of: questionsAbout(id, task.questions) };
  });
}

/** What each client wrote last, by the client's id. */
async function lastWords(db: Db, homework: string): Promise<ReadonlyMap<string, string>> {
  const rows = await db
    .selectFrom('submissions')
    .select(['scope', 'payload'])
    .where('parent', '=', homework)
    .where('part', '=', 'word')
    .orderBy('received_at')
    .execute();
  const read = rows.map(
    ({ scope, payload }) => [scope, readStored(homeworkSubmission, payload)] as const
  );
  return new Map(
    read.flatMap(([scope, sent]) => (sent?.kind === 'word' ? [[scope, sent.text]] : []))
  );
}
