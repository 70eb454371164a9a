import { type Kysely, PostgresAdapter, sql } from 'kysely';
import { NOTED } from './deletions';

export const isPostgres = (db: Kysely<unknown>) =>
  db.getExecutor().adapter instanceof PostgresAdapter;

/** @param on what the trigger fires at @param note the values of kind, id and more */
async function trigger(db: Kysely<unknown>, name: string, on: string, note: string) {
  const into = `insert into deletions (kind, id, more, at) values (${note}, `;
  if (!isPostgres(db)) {
    const at = "strftime('%Y-%m-%dT%H:%M:%fZ', 'now')";
    await sql
      .raw(`create trigger ${name} after ${on} for each row begin ${into}${at}); end`)
      .execute(db);
    return;
  }
  const at = `to_char(clock_timestamp() at time zone 'utc', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
  const body = `begin ${into}${at}); return null; end`;
  await sql
    .raw(`create function ${name}() returns trigger as $$ ${body} $$ language plpgsql`)
    .execute(db);
  await sql
    .raw(`create trigger ${name} after ${on} for each row execute function ${name}()`)
    .execute(db);
}

async function dropTrigger(db: Kysely<unknown>, name: string, table: string) {
  const place = isPostgres(db) ? ` on ${table}` : '';
  await sql.raw(`drop trigger ${name}${place}`).execute(db);
  if (isPostgres(db)) await sql.raw(`drop function ${name}()`).execute(db);
}

/** Triggers see every deletion, whichever statement did it, in its own transaction. */
export async function addTriggers(db: Kysely<unknown>): Promise<void> {
  for (const [table, [kind, id]] of Object.entries(NOTED)) {
    await trigger(db, `${table}_deleted`, `delete on ${table}`, `'${kind}', old.${id}, ''`);
  }
  const made = isPostgres(db) ? 'json_build_object' : 'json_object';
  const more = `${made}('manage_hash', new.manage_hash, 'sealed_share_key', new.sealed_share_key)`;
  const note = `'secret', new.id, ${isPostgres(db) ? `${more}::text` : more}`;
  await trigger(db, 'secrets_renewed', 'update of manage_hash on spaces', note);
}

export async function dropTriggers(db: Kysely<unknown>): Promise<void> {
  await dropTrigger(db, 'secrets_renewed', 'spaces');
  for (const table of Object.keys(NOTED)) await dropTrigger(db, `${table}_deleted`, table);
}
