import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  utimesSync,
  writeFileSync
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { forgetOldBuilds } from '../../scripts/old-builds.mjs';
import { markServed } from '../../server/served.mjs';

/** No process has this number: it is above what systems give. */
const NOBODY = 2 ** 30;

test('the newest builds stay, and an old one as long as somebody serves from it', () => {
  const all = mkdtempSync(join(tmpdir(), 'feltfoot-builds-'));
  const made = ['served', 'given up', 'old', 'new', 'newest'].map((name, i) => {
    const path = join(all, name);
    mkdirSync(path);
    if (name !== 'newest') writeFileSync(join(path, `.served-by-${NOBODY}`), '');
    if (name === 'served') markServed(path);
    utimesSync(path, i + 1, i + 1);
    return path;
  });
  expect(readdirSync(made[0])).toEqual([`.served-by-${process.pid}`]);
  forgetOldBuilds(all, 2);
  expect(made.map((path) => existsSync(path))).toEqual([true, false, false, true, true]);
  rmSync(all, { recursive: true });
});
