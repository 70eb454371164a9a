import { existsSync, readFileSync } from 'node:fs';
import { request, type IncomingMessage } from 'node:http';
import { request as secureRequest } from 'node:https';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { openStore } from '../../src/lib/server/store';
import {
  freshClone,
  giveBack,
  remove,
  removeClones,
  root,
  takeClone,
  typed,
  withBuilds
} from './clone';
import { commandsNamed, textsIn } from './named';
import { LEFT_OUT, TRIALS, type Trial } from './trials';

/** They deal with the store there is. */
const OF_A_STORE = ['npm run backup', 'npm run rollback'];
const named = commandsNamed(root);
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

async function tried(folder: string, command: string, trial: Trial): Promise<void> {
  const { given = '', stdin, serves: until, says, ends = [0], also } = trial;
  const visit = async (url: string) => expect(await statusOf(url), url).toBe(200);
  const { code, output } = await typed(folder, `${command} ${given}`, { stdin, until, visit });
  expect(output).toMatch(says);
  expect(until ? [null] : ends, output).toContain(code);
  if (also) await tried(folder, command, also);
}

/** Of a page, also behind a certificate that nobody vouches for. */
function statusOf(url: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const done = (answer: IncomingMessage) => resolve(answer.resume().statusCode);
    const asked = url.startsWith('https:')
      ? secureRequest(url, { rejectUnauthorized: false, agent: false }, done)
      : request(url, { agent: false }, done);
    asked.on('error', reject).end();
  });
}

describe('what the documents tell to type', () => {
  test('is found among words and in blocks of shell', () => {
    const text = 'Do `npm\nrun x -- --y`, not `npm`.\n```sh\nA=1 npm start # so\n```\n`npx z`';
    expect(textsIn(text)).toEqual(['A=1 npm start', 'npm run x -- --y', 'npm', 'npx z']);
    expect(named.length).toBeGreaterThan(30);
  });

  test('is known here, and what is known here is told there', () => {
    const known = [...Object.keys(TRIALS), ...Object.keys(LEFT_OUT)];
    expect([...new Set(named.map(({ command }) => command))].sort()).toEqual(known.sort());
  });

  test('tells every script of package.json', () => {
    const told = new Set(named.map(({ command }) => command.replace(/^npm (run )?/, '')));
    expect(Object.keys(scripts).filter((script) => !told.has(script))).toEqual([]);
  });

  test.each(named.filter(({ command, flags }) => command in TRIALS && flags.length > 0))(
    '$file: of `$text` each flag is tried',
    ({ command, flags }) => {
      const { given = '', also } = TRIALS[command];
      const all = `${given} ${also?.given ?? ''}`.split(' ');
      expect(all).toEqual(expect.arrayContaining(flags));
    }
  );
});

// Where the whole suite runs, it has just built these very files; else this clone builds them.
const built = process.env.FELTFOOT_BUILD ? root : freshClone();
afterAll(() => {
  removeClones();
  if (built !== root) remove(built);
});

// First, and alone: a build takes both cores, and others work on what it made.
test('`npm run build` works in a fresh clone', async () => {
  const folder = built === root ? freshClone() : built;
  if (built === root) withBuilds(folder, root);
  await tried(folder, 'npm run build', TRIALS['npm run build']);
  if (built === root) remove(folder);
});

describe.concurrent('in a fresh clone, after the install alone,', () => {
  const rest = Object.entries(TRIALS).filter(([command]) => command !== 'npm run build');
  test.each(rest)('`%s` works', async (command, trial) => {
    const folder = takeClone();
    if (trial.needsBuild) withBuilds(folder, built);
    const data = join(folder, '.feltfoot', 'data');
    if (OF_A_STORE.includes(command)) {
      // Without one they say so: what they made anew would look like what was asked for.
      const { code, output } = await typed(folder, `${command} -- saved.jsonl`, {});
      expect(output).toContain(`No store is in ${data}`);
      expect({ code, isMade: existsSync(data) }).toEqual({ code: 1, isMade: false });
      await (await openStore({ folder: data })).close();
    }
    // There must be something to put back, into a store that is empty.
    if (command === 'npm run restore') {
      const another = join(folder, '.feltfoot', 'another');
      await (await openStore({ folder: another })).close();
      const elsewhere = `FELTFOOT_DATA=${another} npm run backup`;
      await tried(folder, elsewhere, TRIALS['npm run backup']);
    }
    await tried(folder, command, trial);
    giveBack(folder);
  });
});
