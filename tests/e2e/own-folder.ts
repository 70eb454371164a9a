import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder of this process's own, gone with it: what only lists the walks leaves none behind. */
export function ownFolder(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `feltfoot-${name}-`));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
