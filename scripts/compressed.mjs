import { existsSync, readdirSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const TEXTS = ['.html', '.js', '.mjs', '.json', '.css', '.svg', '.xml', '.txt', '.md'];
/** As many as are worked on by threads at once. */
const AT_ONCE = 4;
const { BROTLI_PARAM_MODE, BROTLI_PARAM_SIZE_HINT, BROTLI_MODE_TEXT } = constants;

/** Writes each text below a folder once more for browsers that take gzip, and for those that take brotli. */
export async function compressBelow(/** @type {string} */ folder) {
  if (!existsSync(folder)) return;
  const texts = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && TEXTS.includes(extname(entry.name)))
    .map(({ parentPath, name }) => join(parentPath, name))
    .values();
  const one = async () => {
    for (const path of texts) await compress(path);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, one));
}

/** Not by streams: of all files at once they are more than a container may have open. */
async function compress(/** @type {string} */ path) {
  const text = await readFile(path);
  const hints = { [BROTLI_PARAM_MODE]: BROTLI_MODE_TEXT, [BROTLI_PARAM_SIZE_HINT]: text.length };
  await writeFile(`${path}.gz`, await promisify(gzip)(text, { level: 9 }));
  await writeFile(`${path}.br`, await promisify(brotliCompress)(text, { params: hints }));
}
