import { type Assignment, type HomeworkOffer, type RoomHomework } from '../wire';
import { daysAfter } from './retention';
import { type Guide, KEPT_DAYS } from './spaces';
import type { Db } from './store';
import { Refusal } from './faults';
import { storedTask } from './stored';
import { hashToken, newToken, shareToken } from './token';

/** An assignment as it was set, with what the store adds. */
export interface Homework {
  id: string;
  task: Assignment;
  created_at: string;
  closed_at: string | null;
  keep_until: string;
  /** The secret part of the client's link. */
  share: string;
}

/** A last day further off is a slip, and would keep what clients did for as long. */
const MOST_DAYS_AHEAD = 365;

type Row = {
  id: string;
  task: string;
  created_at: string;
  closed_at: string | null;
  keep_until: string;
};

const columns = ['id', 'task', 'created_at', 'closed_at', 'keep_until'] as const;

export async function createAssignment(
  db: Db,
  guide: Guide,
  task: Assignment,
  now: string
): Promise<string> {
  refusePastDay(task.due, now);
  const id = newToken();
  const row = {
    id,
    space_id: guide.space,
    share_hash: hashToken(shareToken(guide.shareKey, id)),
    task: JSON.stringify(task),
    created_at: now,
    closed_at: null,
    keep_until: keptUntil(task.due, now)
  };
  await db.insertInto('assignments').values(row).execute();
  return id;
}

/** Where the sun rises last it is the same day for half a day longer than in UTC. */
const LAST_ZONE_DAYS = 0.5;

function refusePastDay(due: string | null, now: string): void {
  if (due === null || due >= daysAfter(now, -LAST_ZONE_DAYS).slice(0, due.length)) return;
  throw new Refusal(422, `Last day: ${due} has passed. Choose today or a later day.`);
}

/** Its full time from today, or from the last day where that is later and not years away. */
function keptUntil(due: string | null, now: string): string {
  const last = due && due < daysAfter(now, MOST_DAYS_AHEAD) ? due : now;
  return daysAfter(last > now ? last : now, KEPT_DAYS);
}

/** The guide's homework, newest first. */
export async function assignmentsOf(db: Db, guide: Guide): Promise<Homework[]> {
  const rows = await db
    .selectFrom('assignments')
    .select(columns)
    .where('space_id', '=', guide.space)
    .orderBy('created_at', 'desc')
    .execute();
  return rows.map((row) => read(row, guide));
}

/** What a room may take along, newest first: neither closed nor past its last day. */
async function openHomework(db: Db, guide: Guide, now: string): Promise<Homework[]> {
  const all = await assignmentsOf(db, guide);
  return all.filter(({ closed_at, task: { due } }) => {
    return closed_at === null && (due === null || due >= now.slice(0, due.length));
  });
}

/**
 * What a room takes along, and what else it could: only what the guide chose for this room has a link,
 * since whoever reads it can come in.
 */
export async function roomHomework(
  db: Db,
  guide: Guide,
  chosen: string | null,
  origin: string,
  now: string
): Promise<{ homework: RoomHomework | null; choices: HomeworkOffer[] }> {
  const open = await openHomework(db, guide, now);
  const one = open.find(({ id }) => id === chosen);
  return {
    homework: one
      ? { id: one.id, title: one.task.title, link: `${origin}/guide/task#${one.share}` }
      : null,
    choices: open.map(({ id, task, created_at: at }) => ({ id, title: task.title, at }))
  };
}

/** One homework of this guide's; undefined as well when it is another guide's. */
export async function assignmentOf(
  db: Db,
  guide: Guide,
  id: string
): Promise<Homework | undefined> {
  const row = await db
    .selectFrom('assignments')
    .select(columns)
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .executeTakeFirst();
  return row && read(row, guide);
}

function read(row: Row, guide: Guide): Homework {
  const task = storedTask(row.task);
  return { ...row, task, share: shareToken(guide.shareKey, row.id) };
}

/** Takes nothing new from now on, or opens it again. */
export async function setClosed(db: Db, guide: Guide, id: string, closed: string | null) {
  return db
    .updateTable('assignments')
    .set({ closed_at: closed })
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .execute();
}

/** Sets another last day, and keeps the homework for its full time from today or from that day on. */
export async function extend(db: Db, guide: Guide, id: string, due: string | null, now: string) {
  refusePastDay(due, now);
  const found = await assignmentOf(db, guide, id);
  if (!found) return;
  await db
    .updateTable('assignments')
    .set({
      task: JSON.stringify({ ...found.task, due }),
      closed_at: null,
      keep_until: keptUntil(due, now)
    })
    .where('id', '=', id)
    .execute();
}

/** Asks for something else under the same link; refused once somebody came in: they were told what it was. */
export async function replaceTask(
  db: Db,
  guide: Guide,
  id: string,
  task: Assignment,
  now: string
): Promise<void> {
  refusePastDay(task.due, now);
  const { numUpdatedRows } = await db
    .updateTable('assignments')
    .set({ task: JSON.stringify(task), keep_until: keptUntil(task.due, now) })
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .where(({ not, exists, selectFrom }) =>
      not(exists(selectFrom('clients').select('id').where('assignment_id', '=', id)))
    )
    .executeTakeFirst();
  if (numUpdatedRows > 0n) return;
  throw new Refusal(409, 'Someone has started this homework. Set a changed copy instead.');
}

/** Refuses where there is no such homework of this guide's, readable or not. */
export async function refuseNotOwn(db: Db, guide: Guide, id: string): Promise<void> {
  const row = await db
    .selectFrom('assignments')
    .select('id')
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .executeTakeFirst();
  if (!row) throw new Refusal(404, 'That homework isn’t here.');
}
