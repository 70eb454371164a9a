import { type Client, type ClientView } from '../wire';
import type { Db } from './store';
import { storedTask } from './stored';
import { hashToken } from './token';
import { Refusal } from './faults';
import { forgetSent } from './submissions';

/** More names on one link than any course has are a mistake or a nuisance. */
const MOST_CLIENTS = 20_000;

/** The homework behind a link; refuses a link that leads nowhere. */
export async function sharedAssignment(db: Db, share: string) {
  const row = await db
    .selectFrom('assignments')
    .select(['id', 'space_id', 'task', 'closed_at'])
    .where('share_hash', '=', hashToken(share))
    .executeTakeFirst();
  if (!row)
    throw new Refusal(404, 'There’s no homework at this link. Ask your guide for a new one.');
  return { ...row, task: storedTask(row.task) };
}

/**
 * The client who holds this token, made known by it the first time. The token is made on the phone, so
 * that a phone whose first answer got lost does not become a second client.
 */
export async function enter(
  db: Db,
  share: string,
  token: string,
  nickname: string,
  now: string
): Promise<ClientView> {
  const assignment = await sharedAssignment(db, share);
  const known = await clientWith(db, assignment.id, token);
  if (known) return viewOf(known, assignment);
  if (assignment.closed_at) throw new Refusal(410, 'Your guide has closed this homework.');
  await refuseCrowd(db, assignment.id);
  const token_hash = hashToken(token);
  // The id goes into the guide's addresses; the hash of a secret is no secret, but need not be shown.
  const id = hashToken(`client ${token_hash} ${assignment.id}`);
  const client = { id, nickname, joined_at: now, note: '' };
  await db
    .insertInto('clients')
    .values({ ...client, assignment_id: assignment.id, token_hash })
    .onConflict((conflict) => conflict.columns(['assignment_id', 'token_hash']).doNothing())
    .execute();
  return viewOf(client, assignment);
}

/** What a phone gets to know: not whose homework it is. */
function viewOf(client: Client, { id, task, closed_at }: ClientView['assignment']): ClientView {
  return { client, assignment: { id, task, closed_at } };
}

/**
 * The client who was here before. Refuses who no longer is: a phone left open must not bring back
 * whom the guide has deleted.
 */
export async function comeBack(db: Db, share: string, token: string): Promise<ClientView> {
  const assignment = await sharedAssignment(db, share);
  const client = await clientWith(db, assignment.id, token);
  if (client) return viewOf(client, assignment);
  throw new Refusal(
    410,
    'You’re off this homework, and your guide no longer has what you sent. It’s kept here.'
  );
}

async function refuseCrowd(db: Db, assignment: string): Promise<void> {
  const { count } = await db
    .selectFrom('clients')
    .select((of) => of.fn.countAll().as('count'))
    .where('assignment_id', '=', assignment)
    .executeTakeFirstOrThrow();
  if (Number(count) >= MOST_CLIENTS) throw new Refusal(429, 'This homework is full.');
}

export function clientWith(db: Db, assignment: string, token: string): Promise<Client | undefined> {
  return db
    .selectFrom('clients')
    .select(['id', 'nickname', 'joined_at', 'note'])
    .where('assignment_id', '=', assignment)
    .where('token_hash', '=', hashToken(token))
    .executeTakeFirst();
}

/** The client of this id, if it is one of this homework's. */
export function clientOf(db: Db, assignment: string, id: string): Promise<Client | undefined> {
  return db
    .selectFrom('clients')
    .select(['id', 'nickname', 'joined_at', 'note'])
    .where('assignment_id', '=', assignment)
    .where('id', '=', id)
    .executeTakeFirst();
}

export function clientsOf(db: Db, assignment: string): Promise<Client[]> {
  return db
    .selectFrom('clients')
    .select(['id', 'nickname', 'joined_at', 'note'])
    .where('assignment_id', '=', assignment)
    .orderBy('joined_at')
    .execute();
}

export async function writeNote(db: Db, assignment: string, client: string, note: string) {
  await db
    .updateTable('clients')
    .set({ note })
    .where('assignment_id', '=', assignment)
    .where('id', '=', client)
    .execute();
}

/**
 * Deletes a client and all that came from that phone. The client goes first and for itself: what is
 * stored after that finds its sender gone and goes too, and what was stored before goes here.
 */
export async function forgetClient(db: Db, assignment: string, client: string): Promise<void> {
  await db
    .deleteFrom('clients')
    .where('assignment_id', '=', assignment)
    .where('id', '=', client)
    .execute();
  await forgetSent(db, client);
}
