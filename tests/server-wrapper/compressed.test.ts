import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, expect, test } from 'vitest';
import { root } from '../../scripts/run.mjs';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-compressed-'));
afterAll(() => rmSync(folder, { recursive: true }));
const texts = Array.from({ length: 200 }, (_, i) => `const answer_${i} = ${i};\n`);
const pathOf = (i: number) => join(folder, `${i}.js`);

test('more files are compressed than may be open at once', () => {
  texts.forEach((text, i) => writeFileSync(pathOf(i), text));
  writeFileSync(join(folder, 'picture.png'), 'no text');
  const script = `import('./scripts/compressed.mjs').then(({ compressBelow }) => compressBelow(process.argv[1]))`;
  const line = `ulimit -n 64 && exec "${process.execPath}" -e "${script}" "${folder}"`;
  const { status, stderr } = spawnSync('sh', ['-c', line], { cwd: root, encoding: 'utf8' });
  expect(status, stderr).toBe(0);
  for (const [i, text] of texts.entries()) {
    expect(`${gunzipSync(readFileSync(`${pathOf(i)}.gz`))}`).toBe(text);
    expect(`${brotliDecompressSync(readFileSync(`${pathOf(i)}.br`))}`).toBe(text);
  }
  expect(() => readFileSync(join(folder, 'picture.png.gz'))).toThrow('ENOENT');
});
