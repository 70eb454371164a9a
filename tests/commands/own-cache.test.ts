import { realpathSync } from 'node:fs';
import { sep } from 'node:path';
import { resolveConfig } from 'vite';
import { expect, test } from 'vitest';
import { root } from './clone';

// Each clone under test is linked to one folder of what is installed, and runs beside this one.
test('libraries bundled for a browser are not kept in what clones share', async () => {
  const { cacheDir } = await resolveConfig({ root }, 'serve');
  expect(cacheDir.startsWith(realpathSync(root))).toBe(true);
  expect(cacheDir.split(sep)).not.toContain('node_modules');
});
