import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { rooms } from '../../fences.js';

const cruiser = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

interface Sample {
  files: Record<string, string>;
  /** The rules that these files break, in order of their names; a cycle breaks one once. */
  breaks: string[];
}
const rigid = "import Body from 'matter-js/src/body/Body.js';\nexport const body = Body;";

/** No two share a file, so that one run sees them all. */
const SAMPLES: Record<string, Sample> = {
  'sees an import() across a fence': {
    files: {
      'src/lib/model/bait.ts': "export const later = () => import('../scoring/mark');",
      'src/lib/scoring/mark.ts': 'export const mark = 1;'
    },
    breaks: ['model-alone']
  },
  'sees a cycle': {
    files: {
      'src/lib/model/line.ts': "import { rod } from './rod';\nexport const line = () => rod;",
      'src/lib/model/rod.ts': "import { line } from './line';\nexport const rod = () => line;"
    },
    breaks: ['no-cycle']
  },
  'sees a feature’s inside taken past its index, and a sibling that is closed': {
    files: {
      'src/lib/app/clinic/hall.ts':
        "export const later = () => [import('../quiz/ask'), import('../guide/index')];",
      'src/lib/app/guide/index.ts': 'export const guide = 1;',
      'src/lib/app/quiz/ask.ts': 'export const ask = 1;',
      'src/lib/app/quiz/index.ts': "export { ask } from './ask';",
      'src/routes/+page.ts': "import { ask } from '../lib/app/quiz/index';\nexport const a = ask;"
    },
    breaks: ['feature-by-its-index', 'feature-clinic']
  },
  'sees the rigid-body library taken past its two files': {
    files: { 'src/lib/model/solids.ts': rigid, 'src/lib/sandbox/draw/water.ts': rigid },
    breaks: ['rigid-bodies-through-two-files']
  },
  'is content with the ways that are open': {
    files: {
      'src/lib/scoring/sum.ts': "import { jig } from '../model/jig';\nexport const sum = jig;",
      'src/lib/model/jig.ts': 'export const jig = 1;'
    },
    breaks: []
  }
};

/** @returns what breaks a rule in a project of these files, and which */
async function breachesIn(files: Record<string, string>): Promise<{ from: string; of: string }[]> {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-rooms-'));
  for (const [path, code] of Object.entries({ 'tsconfig.json': '{}', ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), code);
  }
  const args = [cruiser, '--config', resolve('.dependency-cruiser.cjs'), '-T', 'json', 'src'];
  // It exits with the number of breaches; the report is on stdout either way.
  const { stdout } = await promisify(execFile)(process.execPath, args, { cwd: folder }).catch(
    (error) => error
  );
  rmSync(folder, { recursive: true, force: true });
  const { violations } = JSON.parse(stdout).summary;
  return violations.map(({ from, rule }: { from: string; rule: { name: string } }) => ({
    from,
    of: rule.name
  }));
}

describe('dependency-cruiser, behind ESLint’s fences,', () => {
  let breaches: Awaited<ReturnType<typeof breachesIn>>;
  beforeAll(async () => {
    const all = Object.values(SAMPLES).map(({ files }) => files);
    breaches = await breachesIn(Object.assign({}, ...all));
  });

  test.each(Object.entries(SAMPLES))('%s', (_, { files, breaks }) => {
    const here = breaches.filter(({ from }) => from in files);
    expect(here.map(({ of }) => of).sort()).toEqual(breaks);
  });

  test('sees nothing elsewhere', () => {
    const known = Object.values(SAMPLES).flatMap(({ files }) => Object.keys(files));
    expect(new Set(known).size).toBe(known.length);
    expect(breaches.filter(({ from }) => !known.includes(from))).toEqual([]);
  });
});

test('every folder of src/lib is a room with a fence, and none is for utilities', () => {
  const folders = readdirSync('src/lib', { withFileTypes: true }).filter((one) =>
    one.isDirectory()
  );
  for (const { name } of folders) expect(Object.keys(rooms)).toContain(name);
});
