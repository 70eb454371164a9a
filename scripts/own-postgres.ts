import { postgres } from '../tests/server/stores';

/** A PostgreSQL for several nodes, and how to be rid of it. */
export interface OwnPostgres {
  url: string;
  stop(): Promise<void>;
}

/**
 * The PostgreSQL that DATABASE_URL names, or else one that lives as long as its user.
 * @returns null, after loud words, where none can be had
 */
export async function ownPostgres(): Promise<OwnPostgres | null> {
  const url = process.env.DATABASE_URL;
  if (url) return { url, stop: async () => {} };
  if (postgres.missing) {
    console.error(`!!! Two nodes need a PostgreSQL: ${postgres.missing}. Or set DATABASE_URL. !!!`);
    return null;
  }
  const server = await postgres.start();
  const place = await server.fresh();
  return { url: place.url ?? '', stop: server.stop };
}
