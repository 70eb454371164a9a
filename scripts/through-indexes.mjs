import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { root } from './run.mjs';

const lib = join(root, 'src', 'lib');

const fromClause = /export\s+(type\s+)?(\*|\{([^}]*)\})\s+from\s+'([^']+)'/g;
const ownExport = (/** @type {string} */ name) =>
  new RegExp(`export\\s+(?:async\\s+)?(?:const|let|function|class)\\*?\\s+${name}\\b`);

/** @param {string} from a file @param {string} what as it is imported there @returns {string | null} */
function fileOf(from, what) {
  const path = what.startsWith('$lib/')
    ? join(lib, what.slice('$lib/'.length))
    : what.startsWith('.')
      ? resolve(dirname(from), what)
      : null;
  if (!path?.startsWith(lib)) return null;
  return (
    [path, `${path}.ts`, join(path, 'index.ts')].find(
      (file) => /\.\w+$/.test(file) && existsSync(file)
    ) ?? null
  );
}

/** @type {Map<string, { named: Map<string, { file: string, name: string }>, all: string[] }>} */
const read = new Map();

/** What an index hands on: names, and files of which it hands on all. @param {string} index */
function handedOn(index) {
  const known = read.get(index);
  if (known) return known;
  const found = { named: new Map(), all: /** @type {string[]} */ ([]) };
  for (const [, isType, what, names, from] of readFileSync(index, 'utf8').matchAll(fromClause)) {
    const file = isType ? null : fileOf(index, from);
    if (!file) continue;
    if (what === '*') found.all.push(file);
    for (const one of (names ?? '').split(',')) {
      const [name, as = name] = one.trim().split(/\s+as\s+/);
      if (name && !name.startsWith('type ')) found.named.set(as, { file, name });
    }
  }
  read.set(index, found);
  return found;
}

/**
 * Where a name is made that an index hands on, through further indexes.
 * @param {string} index @param {string} name @returns {{ file: string, name: string } | null}
 */
export function madeIn(index, name) {
  const { named, all } = handedOn(index);
  const one = named.get(name);
  if (one) return (one.file.endsWith('/index.ts') && madeIn(one.file, one.name)) || one;
  for (const file of all) {
    if (ownExport(name).test(readFileSync(file, 'utf8'))) return { file, name };
    const deeper = madeIn(file, name);
    if (deeper) return deeper;
  }
  return null;
}

/**
 * Imports from a room's index become imports from the files behind it. Code is cut into chunks by what
 * imports what, file by file: through an index every page reaches the whole room, and the first page
 * would fetch what any page uses. Nothing in our rooms does anything by being imported, so that the
 * order in which files are read makes no difference.
 * @returns {import('vite').Plugin}
 */
export function throughIndexes() {
  return {
    name: 'through-indexes',
    apply: 'build',
    enforce: 'post',
    transform(code, id) {
      const file = id.split('?')[0];
      if (!file.startsWith(join(root, 'src')) || !/\.(ts|svelte)$/.test(file)) return;
      let changed = '';
      let end = 0;
      for (const node of this.parse(code).body) {
        const written = node.type === 'ImportDeclaration' && replacement(node, file);
        if (!written) continue;
        changed += code.slice(end, node.start) + written;
        end = node.end;
      }
      return end === 0 ? undefined : { code: changed + code.slice(end), map: null };
    }
  };
}

/**
 * @param {import('estree').ImportDeclaration} node @param {string} file
 * @returns {string | null} what stands in its place
 */
function replacement(node, file) {
  const index = fileOf(file, String(node.source.value));
  if (!index?.endsWith('/index.ts') || node.specifiers.length === 0) return null;
  const parts = node.specifiers.map((one) => {
    if (one.type !== 'ImportSpecifier') return null;
    const name = /** @type {import('estree').Identifier} */ (one.imported).name;
    const made = madeIn(index, name) ?? { file: index, name };
    return `import { ${made.name} as ${one.local.name} } from ${JSON.stringify(made.file)};`;
  });
  return parts.includes(null) ? null : parts.join(' ');
}
