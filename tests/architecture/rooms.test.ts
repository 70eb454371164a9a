import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { rooms } from '../../fences.js';

const cruiser = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

describe('dependency-cruiser, behind ESLint’s fences,', () => {
  let folder: string;
  beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'feltfoot-rooms-'))));
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** @returns the names of the rules that a project of these files breaks */
  async function broken(files: Record<string, string>): Promise<string[]> {
    for (const [path, code] of Object.entries({ 'tsconfig.json': '{}', ...files })) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), code);
    }
    const args = [cruiser, '--config', resolve('.dependency-cruiser.cjs'), '-T', 'json', 'src'];
    // It exits with the number of breaches; the report is on stdout either way.
    const { stdout } = await promisify(execFile)(process.execPath, args, { cwd: folder }).catch(
      (error) => error
    );
    const { summary } = JSON.parse(stdout);
    return summary.violations.map(({ rule }: { rule: { name: string } }) => rule.name);
  }

  test('sees an import() across a fence', async () => {
    const files = {
      'src/lib/model/bait.ts': "export const later = () => import('../scoring/mark');",
      'src/lib/scoring/mark.ts': 'export const mark = 1;'
    };
    expect(await broken(files)).toEqual(['model-alone']);
  });

  test('sees a cycle', async () => {
    const files = {
      'src/lib/model/line.ts': "import { rod } from './rod';\nexport const line = () => rod;",
      'src/lib/model/rod.ts': "import { line } from './line';\nexport const rod = () => line;"
    };
    expect(new Set(await broken(files))).toEqual(new Set(['no-cycle']));
  });

  test('sees a feature’s inside taken past its index, and a sibling that is closed', async () => {
    const files = {
      'src/lib/app/clinic/hall.ts':
        "export const later = () => [import('../quiz/ask'), import('../guide/index')];",
      'src/lib/app/guide/index.ts': 'export const guide = 1;',
      'src/lib/app/quiz/ask.ts': 'export const ask = 1;',
      'src/lib/app/quiz/index.ts': "export { ask } from './ask';",
      'src/routes/+page.ts': "import { ask } from '../lib/app/quiz/index';\nexport const a = ask;"
    };
    expect((await broken(files)).sort()).toEqual(['feature-by-its-index', 'feature-clinic']);
  });

  test('sees the rigid-body library taken past its two files', async () => {
    const use = "import Body from 'matter-js/src/body/Body.js';\nexport const body = Body;";
    const files = { 'src/lib/model/solids.ts': use, 'src/lib/sandbox/draw/water.ts': use };
    expect(await broken(files)).toEqual(['rigid-bodies-through-two-files']);
  });

  test('is content with the ways that are open', async () => {
    const files = {
      'src/lib/scoring/mark.ts': "import { bait } from '../model/bait';\nexport const mark = bait;",
      'src/lib/model/bait.ts': 'export const bait = 1;'
    };
    expect(await broken(files)).toEqual([]);
  });
});

test('every folder of src/lib is a room with a fence, and none is for utilities', () => {
  const folders = readdirSync('src/lib', { withFileTypes: true }).filter((one) =>
    one.isDirectory()
  );
  for (const { name } of folders) expect(Object.keys(rooms)).toContain(name);
});
