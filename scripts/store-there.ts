import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { STORE_FILE } from '../src/lib/server/opened-store';
import { placeFrom, type StorePlace } from '../src/lib/server/store';

/**
 * Where the store is that there must be. Asked for in the wrong folder a new one would be made there: a backup of
 * nothing looks like a backup.
 */
export function storeThere(env: Record<string, string | undefined>): StorePlace {
  const place = placeFrom(env);
  if (place.url || existsSync(join(place.folder, STORE_FILE))) return place;
  throw new Error(
    `No store is in ${place.folder}. Set FELTFOOT_DATA to its folder, or DATABASE_URL, as its server has them.`
  );
}
