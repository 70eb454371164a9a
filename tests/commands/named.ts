import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A command as a document names it. */
export interface Named {
  file: string;
  /** "npm run load -- --phones 500 --json" */
  text: string;
  /** Without what is set before it and given to it: "npm run load". */
  command: string;
  /** "--phones", "--json" */
  flags: string[];
}

const PROGRAM = /^(?:npm|npx|node|tsx|pnpm|yarn|git|docker|curl|psql|sh|bash|\.\/\S+)\s/;
/** `PORT=3001 npm start` sets a variable for one command. */
const SETTING = /^(?:[A-Z_]+=\S*\s+)+/;

/** Every command in README, DEVELOPERS and docs: lines of shell, and code among words. */
export function commandsNamed(root: string): Named[] {
  const docs = readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name));
  return ['README.md', 'DEVELOPERS.md', ...docs].flatMap((file) =>
    textsIn(readFileSync(join(root, file), 'utf8')).map((text) => ({ file, ...parts(text) }))
  );
}

/** @param markdown of one document */
export function textsIn(markdown: string): string[] {
  const blocks = [...markdown.matchAll(/^```(\w*)\n([\s\S]*?)^```/gm)];
  const shell = blocks
    .filter(([, kind]) => kind === 'sh' || kind === 'bash')
    .flatMap(([, , lines]) => lines.split('\n'))
    .map((line) => line.replace(/\s#.*$/, '').trim())
    .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('export '));
  const words = markdown.replace(/^```[\s\S]*?^```/gm, '');
  const spans = [...words.matchAll(/`([^`]+)`/g)]
    .map(([, code]) => code.replace(/\s+/g, ' ').trim())
    .filter((code) => PROGRAM.test(`${code.replace(SETTING, '')} `));
  return [...shell, ...spans];
}

function parts(text: string): Omit<Named, 'file'> {
  const bare = text.replace(SETTING, '').replace('--silent ', '');
  const [, command = bare] = /^(npm run \S+|npm \S+|npx \S+|node \S+|\S+)/.exec(bare) ?? [];
  return { text, command, flags: bare.slice(command.length).match(/(?<=\s)--?[a-z]+/g) ?? [] };
}
