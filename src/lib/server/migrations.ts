import type { ColumnDefinitionBuilder, Kysely, Migration, MigrationProvider } from 'kysely';
import { addTriggers, dropTriggers, isPostgres } from './deletion-triggers';

type Column = [name: string, type: 'text' | 'integer' | 'real', nullable?: 'null'];

/** Column lists instead of builder calls: the whole first schema can be read at one glance. */
async function create(db: Kysely<unknown>, table: string, key: string[], columns: Column[]) {
  let builder = db.schema.createTable(table);
  for (const [name, type, nullable] of columns) {
    builder = builder.addColumn(name, type, (column) => (nullable ? column : column.notNull()));
  }
  await builder.addPrimaryKeyConstraint(`${table}_key`, key as never[]).execute();
}

async function index(db: Kysely<unknown>, table: string, columns: string[], unique = false) {
  const builder = db.schema
    .createIndex(`${table}_${columns.join('_')}`)
    .on(table)
    .columns(columns);
  await (unique ? builder.unique() : builder).execute();
}

const text = (...names: string[]) => names.map((name): Column => [name, 'text']);

const first: Migration = {
  async up(db) {
    await create(
      db,
      'spaces',
      ['id'],
      [...text('id', 'name', 'manage_hash', 'sealed_share_key', 'created_at', 'keep_until')]
    );
    await create(
      db,
      'sessions',
      ['token_hash'],
      [...text('token_hash', 'space_id', 'sealed_share_key', 'ends_at')]
    );
    await create(
      db,
      'assignments',
      ['id'],
      [
        ...text('id', 'space_id', 'share_hash', 'task', 'created_at', 'keep_until'),
        ['closed_at', 'text', 'null']
      ]
    );
    await create(
      db,
      'clients',
      ['id'],
      [...text('id', 'assignment_id', 'token_hash', 'nickname', 'joined_at', 'note')]
    );
    await create(
      db,
      'rooms',
      ['id'],
      [...text('id', 'space_id', 'code', 'state', 'created_at', 'ends_at'), ['version', 'integer']]
    );
    await create(db, 'seats', ['id'], text('id', 'room_id', 'token_hash', 'joined_at'));
    await create(
      db,
      'submissions',
      ['scope', 'id'],
      [...text('scope', 'id', 'parent', 'part', 'payload_hash', 'payload', 'reply', 'received_at')]
    );
    await index(db, 'spaces', ['manage_hash'], true);
    await index(db, 'sessions', ['space_id']);
    await index(db, 'assignments', ['share_hash'], true);
    await index(db, 'assignments', ['space_id']);
    await index(db, 'clients', ['assignment_id', 'token_hash'], true);
    await index(db, 'rooms', ['code'], true);
    await index(db, 'rooms', ['space_id']);
    await index(db, 'seats', ['room_id', 'token_hash'], true);
    await index(db, 'submissions', ['parent', 'part']);
  }
};

const passkeys: Migration = {
  async up(db) {
    const key = text('id', 'space_id', 'public_key', 'counter', 'sealed_share_key', 'created_at');
    await create(db, 'passkeys', ['id'], key);
    await index(db, 'passkeys', ['space_id']);
    const asked = text('token_hash', 'challenge', 'space_id', 'ends_at');
    await create(db, 'challenges', ['token_hash'], asked);
  }
};

const door: Migration = {
  async up(db) {
    await db.schema.alterTable('rooms').addColumn('door_closed_at', 'text').execute();
  },
  async down(db) {
    await db.schema.alterTable('rooms').dropColumn('door_closed_at').execute();
  }
};

const empty = (column: ColumnDefinitionBuilder) => column.notNull().defaultTo('');

const deletions: Migration = {
  async up(db) {
    await db.schema
      .createTable('deletions')
      .addColumn('n', isPostgres(db) ? 'serial' : 'integer', (column) => column.primaryKey())
      .addColumn('kind', 'text', empty)
      .addColumn('id', 'text', empty)
      .addColumn('more', 'text', empty)
      .addColumn('at', 'text', empty)
      .execute();
    await addTriggers(db);
    await db.schema.alterTable('sessions').addColumn('opened_at', 'text', empty).execute();
    await db.schema.alterTable('sessions').addColumn('device', 'text', empty).execute();
    await db.schema.alterTable('seats').addColumn('address_group', 'text', empty).execute();
  },
  async down(db) {
    await db.schema.alterTable('seats').dropColumn('address_group').execute();
    await db.schema.alterTable('sessions').dropColumn('device').execute();
    await db.schema.alterTable('sessions').dropColumn('opened_at').execute();
    await dropTriggers(db);
    await db.schema.dropTable('deletions').execute();
  }
};

/**
 * Names sort in order; one that has run anywhere is never changed. The last can be taken back, so that the
 * program before it can be put in place again.
 */
export const migrations: MigrationProvider = {
  getMigrations: async () => ({
    '0001-first': first,
    '0002-passkeys': passkeys,
    '0003-door': door,
    '0004-deletions': deletions
  })
};
