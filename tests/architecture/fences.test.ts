import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';
import { closedTo, rooms } from '../../fences.js';

const eslint = new ESLint();

/** @returns the messages of ESLint on this code, were it in that file */
async function complaints(filePath: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return result.messages.map(({ message }) => message);
}

const fences = Object.entries(rooms).map(([name, room]) => ({ name, ...room }));
const pureRooms = fences.filter(({ pure }) => pure).map(({ name }) => name);
const file = (room: string) => `src/lib/${room}/sample.ts`;
const using = (path: string) => `import { thing } from '${path}';\nexport const used = thing;\n`;

describe('each room’s fence', () => {
  const breaches = fences.flatMap(({ name, fence }) =>
    closedTo(name).map((other) => ({ name, other, fence }))
  );
  test.each(breaches)(
    '$fence keeps $name from importing $other',
    async ({ name, other, fence }) => {
      for (const path of [`$lib/${other}/thing`, `../${other}/thing`, `../../lib/${other}/thing`]) {
        const messages = await complaints(file(name), using(path));
        expect(messages, path).toEqual([expect.stringContaining(`[fence: ${fence}]`)]);
      }
    }
  );

  const ways = fences.flatMap(({ name, may }) => may.map((other) => ({ name, other })));
  test.each(ways)('$name may import $other', async ({ name, other }) => {
    expect(await complaints(file(name), using(`$lib/${other}/thing`))).toEqual([]);
    expect(await complaints(file(name), using(`../${other}/thing`))).toEqual([]);
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
