import { readdirSync } from 'node:fs';
import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';
import { closedTo, features, rooms, siblingsClosedTo } from '../../fences.js';

/** Only what a fence is made of runs: some thousand samples are linted here. */
const eslint = new ESLint({
  ruleFilter: ({ ruleId }) => /^no-(restricted|irregular)-/.test(ruleId)
});

/** @returns the messages of ESLint on this code, were it in that file */
async function complaints(filePath: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return result.messages.map(({ message }) => message);
}

const fences = Object.entries(rooms).map(([name, room]) => ({ name, ...room }));
const pureRooms = fences.filter(({ pure }) => pure).map(({ name }) => name);
const file = (room: string) => `src/lib/${room}/sample.ts`;
const using = (path: string) => `import { thing } from '${path}';\nexport const used = thing;\n`;

/** What is tried to be imported by a file, and what ESLint says of a file that has one of them in each line. */
const triedIn = new Map<string, string[]>();
const linted = new Map<string, ReturnType<typeof eslint.lintText>>();

/** To be told of before any test runs, as all of a file's are linted at once. */
function trying(filePath: string, ...paths: string[]): void {
  triedIn.set(filePath, [...(triedIn.get(filePath) ?? []), ...paths]);
}

/** @returns the messages of ESLint on this import, were it in that file */
async function complaintsOf(filePath: string, path: string): Promise<string[]> {
  const tried = triedIn.get(filePath) ?? [];
  const line = tried.indexOf(path) + 1;
  if (line === 0) throw new RangeError(`${path} is not among what is tried in ${filePath}`);
  const code = tried.map((one, i) => `import { thing as thing${i} } from '${one}';\n`).join('');
  const results = linted.get(filePath) ?? eslint.lintText(code, { filePath });
  linted.set(filePath, results);
  const [{ messages }] = await results;
  return messages.filter((one) => one.line === line).map(({ message }) => message);
}

describe('each room’s fence', () => {
  const breaches = fences.flatMap(({ name, fence }) =>
    closedTo(name).map((other) => ({ name, other, fence }))
  );
  const pathsTo = (other: string) => [
    `$lib/${other}/thing`,
    `../${other}/thing`,
    `../../lib/${other}/thing`
  ];
  for (const { name, other } of breaches) trying(file(name), ...pathsTo(other));
  test.each(breaches)(
    '$fence keeps $name from importing $other',
    async ({ name, other, fence }) => {
      for (const path of pathsTo(other)) {
        const messages = await complaintsOf(file(name), path);
        expect(messages, path).toEqual([expect.stringContaining(`[fence: ${fence}]`)]);
      }
    }
  );

  const ways = fences.flatMap(({ name, may }) => may.map((other) => ({ name, other })));
  for (const { name, other } of ways)
    trying(file(name), `$lib/${other}/thing`, `../${other}/thing`);
  test.each(ways)('$name may import $other', async ({ name, other }) => {
    expect(await complaintsOf(file(name), `$lib/${other}/thing`)).toEqual([]);
    expect(await complaintsOf(file(name), `../${other}/thing`)).toEqual([]);
  });

  test.each(fences)('$fence lets $name import its own files', async ({ name }) => {
    expect(await complaints(file(name), using('./thing'))).toEqual([]);
    expect(await complaints(`src/lib/${name}/part/sample.ts`, using('../thing'))).toEqual([]);
  });

  test.each(fences)('$name imports no page', async ({ name }) => {
    const messages = await complaints(file(name), using('../../routes/thing'));
    expect(messages).toEqual([expect.stringContaining('[fence: routes-on-top]')]);
  });
});

const featureFile = (feature: string) => `src/lib/app/${feature}/Sample.ts`;

describe('each feature’s fence', () => {
  const names = Object.keys(features);
  const breaches = names.flatMap((name) =>
    siblingsClosedTo(name).map((other) => ({ name, other }))
  );
  for (const { name, other } of breaches)
    trying(featureFile(name), `$lib/app/${other}`, `../${other}`);
  test.each(breaches)('keeps $name from $other', async ({ name, other }) => {
    const messages = await complaintsOf(featureFile(name), `$lib/app/${other}`);
    expect(messages).toEqual([expect.stringContaining(`[fence: feature-${name}]`)]);
    expect(await complaintsOf(featureFile(name), `../${other}`)).toHaveLength(1);
  });

  const ways = names.flatMap((name) => features[name].may.map((other) => ({ name, other })));
  const besideIndex = (other: string) => [
    `$lib/app/${other}/inside`,
    `../${other}/inside`,
    `../${other}`
  ];
  for (const { name, other } of ways)
    trying(featureFile(name), `$lib/app/${other}`, ...besideIndex(other));
  test.each(ways)('lets $name use $other by its index only', async ({ name, other }) => {
    expect(await complaintsOf(featureFile(name), `$lib/app/${other}`)).toEqual([]);
    for (const path of besideIndex(other)) {
      const messages = await complaintsOf(featureFile(name), path);
      expect(messages, path).toEqual([expect.stringContaining('[fence: feature-by-its-index]')]);
    }
  });

  test.each(ways)('never both ways: $other does not use $name', ({ name, other }) => {
    expect(features[other].may).not.toContain(name);
  });

  test('each folder of src/lib/app is a feature, and each feature a folder', () => {
    expect(readdirSync('src/lib/app').sort()).toEqual([...names].sort());
  });
});

describe('a page', () => {
  const page = 'src/routes/sample/+page.ts';
  test('imports no file beside it but what the kit makes', async () => {
    const messages = await complaints(page, using('./words'));
    expect(messages).toEqual([expect.stringContaining('[fence: pages-hold-no-logic]')]);
    expect(await complaints(page, using('./$types'))).toEqual([]);
  });

  test('takes features by their index', async () => {
    expect(await complaints(page, using('$lib/app/quiz'))).toEqual([]);
    const messages = await complaints(page, using('$lib/app/quiz/questions'));
    expect(messages).toEqual([expect.stringContaining('[fence: feature-by-its-index]')]);
  });

  const routes = readdirSync('src/routes', { recursive: true, withFileTypes: true }).filter((one) =>
    one.isFile()
  );
  test('is a file that begins with +, and src/routes holds nothing else', () => {
    expect(routes.length).toBeGreaterThan(50);
    expect(routes.map(({ name }) => name).filter((name) => !name.startsWith('+'))).toEqual([]);
  });
});

describe.each(pureRooms)('the pure room %s', (name) => {
  test.each([
    ['the clock', 'export const now = Date.now();\n'],
    ['a new date', 'export const now = new Date();\n'],
    ['the stopwatch', 'export const now = performance.now();\n'],
    ['chance', 'export const roll = Math.random();\n'],
    ['chance by another name', 'const { random } = Math;\nexport const roll = random();\n'],
    ['the window', 'export const wide = window.innerWidth;\n'],
    ['the document', 'export const body = document.body;\n'],
    ['a timer', 'export const later = setTimeout(() => {}, 1);\n'],
    ['the global object', 'export const all = globalThis;\n'],
    ['import()', "export const late = import('./thing');\n"],
    ['a Node module', "import { cpus } from 'node:os';\nexport const n = cpus;\n"],
    ['an unprefixed Node module', "import { cpus } from 'os';\nexport const n = cpus;\n"],
    ['Svelte', "import { tick } from 'svelte';\nexport const t = tick;\n"],
    ['Kit', "import { page } from '$app/state';\nexport const p = page;\n"]
  ])('has no %s', async (_what, code) => {
    const messages = await complaints(file(name), code);
    expect(messages).toEqual([expect.stringContaining('[fence: pure-room]')]);
  });

  test('has mathematics and its arguments', async () => {
    const code =
      'export const at = (now: number, random: () => number) => Math.sin(now) * random();\n';
    expect(await complaints(file(name), code)).toEqual([]);
  });
});

test('a room with a screen may ask for the time', async () => {
  expect(await complaints(file('sandbox'), 'export const now = performance.now();\n')).toEqual([]);
});

test('a no-break space is written so that it is seen', async () => {
  const saying = (space: string) => `export const foot = '1${space}ft';\n`;
  expect(await complaints('src/sample.ts', saying('\\u00a0'))).toEqual([]);
  expect(await complaints('src/sample.ts', saying('\u00a0'))).toHaveLength(1);
});
