import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { format } from 'prettier';
import { REASONS } from './dependency-reasons.mjs';
import { ensureInstalled } from './install.mjs';
import { root } from './run.mjs';
import { say } from './say.mjs';

/** Licences that may go into what is under the MIT licence, named as SPDX names them. */
const COMPATIBLE =
  /^\(?(MIT|MIT-0|ISC|BSD-2-Clause|BSD-3-Clause|0BSD|Apache-2\.0|OFL-1\.1|CC0-1\.0|CC-BY-4\.0|BlueOak-1\.0\.0|MPL-2\.0|Python-2\.0|Unlicense|WTFPL|Zlib)\b/;

await ensureInstalled();
const read = (/** @type {string} */ path) => JSON.parse(readFileSync(join(root, path), 'utf8'));
const { dependencies, devDependencies } = read('package.json');
const { packages } = read('package-lock.json');

/** Everything that is installed, by the lockfile: name, version, licence, hash. */
const parts = Object.entries(packages)
  .filter(([path]) => path !== '')
  .map(([path, { version, license, integrity, dev = false }]) => {
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    return { name, version, license: license ?? 'none said', integrity, dev };
  })
  .sort((a, b) => (a.name < b.name ? -1 : Number(a.name > b.name)));

/** @param {Record<string, string>} wanted */
function table(wanted) {
  const rows = Object.keys(wanted).map((name) => {
    const reason = REASONS[name];
    if (!reason) throw new Error(`${name}: no reason is given in scripts/dependency-reasons.mjs`);
    const { version, license } = packages[`node_modules/${name}`];
    return `| ${name} | ${version} | ${license} | ${reason} |`;
  });
  return ['| library | version | licence | why |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

/** How many of all that is installed are under each licence. */
function licences() {
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const { license } of parts) counts.set(license, (counts.get(license) ?? 0) + 1);
  const rows = [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
  return [
    '| licence | parts |',
    '| --- | --- |',
    ...rows.map(([name, n]) => `| ${name} | ${n} |`)
  ].join('\n');
}

const strange = parts.filter(({ license, dev }) => !dev && !COMPATIBLE.test(license));
if (strange.length > 0) {
  throw new Error(strange.map(({ name, license }) => `${name}: licence ${license}`).join('\n'));
}

const page = `# What is used, and why

Written by \`npm run licences\` from the lockfile; a test holds it against it. Every part, with its hash, is in
[bill-of-materials.json](bill-of-materials.json) (CycloneDX 1.5). Of what is served no licence
asks for more than to be named; of what is under MPL-2.0 the source is where the library is, unchanged.

## In what is served

${table(dependencies)}

## For building and testing

${table(devDependencies)}

## Licences of all ${parts.length} parts

${licences()}
`;

/** An integrity of npm's as CycloneDX spells a hash. @param {string} [integrity] */
function hashes(integrity) {
  const [, kind, hash] = /^(sha\d+)-(.+)$/.exec(integrity ?? '') ?? [];
  if (!kind) return {};
  const content = Buffer.from(hash, 'base64').toString('hex');
  return { hashes: [{ alg: kind.replace('sha', 'SHA-'), content }] };
}

const bill = {
  bomFormat: 'CycloneDX',
  specVersion: '1.5',
  version: 1,
  metadata: {
    component: { type: 'application', name: 'feltfoot', version: read('package.json').version }
  },
  components: parts.map(({ name, version, license, integrity, dev }) => ({
    type: 'library',
    name,
    version,
    purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
    scope: dev ? 'excluded' : 'required',
    licenses: [{ expression: license }],
    ...hashes(integrity)
  }))
};

const files = {
  'docs/dependencies.md': await format(page, { parser: 'markdown', printWidth: 110 }),
  'docs/bill-of-materials.json': `${JSON.stringify(bill)}\n`
};
const isChecking = process.argv.includes('--check');
for (const [path, text] of Object.entries(files)) {
  if (!isChecking) writeFileSync(join(root, path), text);
  else if (readFileSync(join(root, path), 'utf8') !== text) {
    throw new Error(`${path} is not what the lockfile says: npm run licences`);
  }
}
say(
  `${parts.length} parts, ${Object.keys(REASONS).length} of them our own choice, are written down.`
);
