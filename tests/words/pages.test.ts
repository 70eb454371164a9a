import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { saidWrongly, tooLong } from '../../src/lib/course/voice';

/** What a page's markup says: neither its script nor its style, no comments, and no code in braces. */
function saidByMarkup(source: string): string {
  return source
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<!--[\s\S]*?-->/g, ' ')
    .replace(/class="[^"]*"|resolve\('[^']*'\)/g, ' ')
    .replace(/=\{[^{}]*\}/g, ' ')
    .replace(/\{[#:/@][^{}]*\}/g, ' ');
}

/** Sentences in quotes of a script or a module: a capital, words, and a stop. */
function saidByCode(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, ' ').replace(/^\s*\/\/.*$/gm, ' ');
  return [...code.matchAll(/(['`])([A-Z][^'`\n]* [^'`\n]*[.:?])\1/g)].map(([, , said]) => said);
}

/** Errors that a server tells are read, too, and so is what a schema says of a field. */
const files = [
  'src/lib/app',
  'src/routes',
  'src/lib/sandbox',
  'src/lib/server',
  'src/lib/wire'
].flatMap((room) =>
  readdirSync(room, { recursive: true, encoding: 'utf8' }).map((file) => join(room, file))
);
const read = (ending: string) =>
  files
    .filter((file) => file.endsWith(ending))
    .map((file) => [file, readFileSync(file, 'utf8')] as const);

test('no page says what no guide says', () => {
  const faults = read('.svelte').flatMap(([file, source]) => {
    const script = /<script[\s\S]*?<\/script>/.exec(source)?.[0] ?? '';
    const lines = saidByMarkup(source)
      .split('\n')
      .map((line) => line.trim());
    return [...lines, ...saidByCode(script)].flatMap((line) =>
      saidWrongly(line).map((fault) => `${file} ${fault}`)
    );
  });
  expect(faults).toEqual([]);
});

test('nor do the sentences that pages take from modules, errors among them', () => {
  const faults = read('.ts').flatMap(([file, source]) =>
    saidByCode(source).flatMap((line) => saidWrongly(line).map((fault) => `${file} ${fault}`))
  );
  expect(faults).toEqual([]);
});

test('the scan finds what is said in markup and in code, and leaves code alone', () => {
  expect(saidByMarkup('<p class={whoever}>Whoever <!-- shall --> casts</p>')).toMatch(
    /Whoever +casts/
  );
  expect(saidByMarkup('<script>shall</script>')).not.toMatch(/shall/);
  expect(saidByCode("const a = 'It shall be down.'; // 'We shall see.'")).toContain(
    'It shall be down.'
  );
});

/** Spaced by hand, or by the function that sets a unit behind a number: `formatShare` sets none. */
const SPACED_PERCENT = /[\d}](?:\s|&nbsp;|\\u00a0)%(?=['"`<).,])|, '%'\)/;
/** The thing tied on is the jig; "bait" is any bait, or what fish eat. Strings that are no sentences, too. */
const THE_BAIT = /['"`>][^'"`<>\n]*\b(the|your) bait\b(?! model)/i;

const rooms = ['src/lib/scoring', 'src/lib/practice', 'src/lib/course', 'src/lib/fit'];
const sources = [
  ...files,
  ...rooms.flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: 'utf8' }).map((file) => join(room, file))
  )
].filter((file) => /\.(ts|svelte)$/.test(file) && !file.endsWith('course/voice.ts'));

test.each([
  ['sets a space before a percent sign that is read', SPACED_PERCENT],
  ['calls the thing tied on a bait', THE_BAIT]
])('no source %s', (_, wrong) => {
  const comments = /\/\*[\s\S]*?\*\/|<!--[\s\S]*?-->|\/\/ .*$/gm;
  const found = sources.filter((file) =>
    wrong.test(readFileSync(file, 'utf8').replace(comments, ' '))
  );
  expect(found).toEqual([]);
});

/** Pages that are made of a file in docs/: its paragraphs and points, each on one line. */
test.each(['docs/model.md', 'docs/accessibility.md'])(
  '%s has no sentence over 25 words',
  (file) => {
    const points = readFileSync(file, 'utf8')
      .split(/\n\s*\n|\n(?=\s*- )/)
      .filter((point) => !/^\s*\|/m.test(point))
      .map((point) => point.replace(/\*\*/g, '').replace(/\s*\n\s*/g, ' '));
    expect(points.flatMap(tooLong)).toEqual([]);
  }
);
