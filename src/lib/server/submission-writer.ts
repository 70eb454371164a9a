import type { Tables } from './tables';
import { FOR_DISK, queryBatcher } from './query-batcher';

type Row = Tables['submissions'];

/**
 * Stores what came in the same moment. Resolves when the row is on the disk: true if it is new, false
 * if its key was there before.
 */
export const write = queryBatcher(async (db, rows: Row[]): Promise<boolean[]> => {
  const first = new Map(rows.map((row) => [keyOf(row), row] as const).reverse());
  const written = await db
    .insertInto('submissions')
    .values([...first.values()])
    .onConflict((conflict) => conflict.columns(['scope', 'id']).doNothing())
    .returning(['scope', 'id'])
    .execute();
  const isNew = new Set(written.map(keyOf));
  // The same key twice in one statement: the first is the new one.
  return rows.map((row) => isNew.has(keyOf(row)) && first.get(keyOf(row)) === row);
}, FOR_DISK);

const keyOf = ({ scope, id }: { scope: string; id: string }) => JSON.stringify([scope, id]);
