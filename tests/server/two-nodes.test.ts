import { spawn, type ChildProcess } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ensureBuilt } from '../../scripts/build.mjs';
import { codeOf, follow, until } from '../../scripts/load-clinic';
import { linesOf, newHomework, tryOf } from '../../scripts/load-homework';
import { askNode, newGuide } from '../../scripts/load-nodes';
import { newToken } from '../../src/lib/server/token';
import { postgres } from './stores';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the script says when it is up. */
interface Up {
  proxy: string;
  nodes: { base: string; pid: number }[];
}

function readUp(lines: string[]): Up | null {
  const text = lines.join('\n');
  const proxy = /behind (http:\S+\d)/.exec(text)?.[1];
  const nodes = [...text.matchAll(/(http:\S+)\s+process (\d+)/g)].map(([, base, pid]) => {
    return { base, pid: Number(pid) };
  });
  return proxy && nodes.length === 2 ? { proxy, nodes } : null;
}

async function startScript(build: string): Promise<{ script: ChildProcess; up: Up }> {
  const env = { ...process.env, DATABASE_URL: '', FELTFOOT_BUILD: build, PORT: '0' };
  const args = ['--import', 'tsx', 'scripts/two-nodes.ts'];
  const script = spawn(process.execPath, args, {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'inherit']
  });
  const lines: string[] = [];
  for await (const line of createInterface({ input: script.stdout })) {
    lines.push(line);
    const up = readUp(lines);
    if (up) return { script, up };
  }
  throw new Error(`two-nodes ended: ${lines.join('\n')}`);
}

/** A phone keeps what it has and sends it again until it is acknowledged. */
async function asPhone<T>(send: () => Promise<T>): Promise<T> {
  for (let time = 1; ; time++) {
    try {
      return await send();
    } catch (error) {
      if (time === 20) throw error;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

const suite = postgres.missing ? describe.skip : describe;
suite('two nodes behind a proxy', () => {
  let script: ChildProcess;
  let up: Up;
  let cookie: string;
  const stop = new AbortController();

  beforeAll(async () => {
    const build = process.env.FELTFOOT_BUILD || (await ensureBuilt());
    ({ script, up } = await startScript(build));
    cookie = await newGuide(up.proxy);
  }, 180_000);
  afterAll(() => void script?.kill('SIGTERM'));

  /** A screen that comes back whenever its feed breaks off, as a browser’s does. */
  function screenOf(id: string) {
    const seen: { part: string; answered: number; shown: Shown }[] = [];
    const url = `${up.proxy}/api/guide/clinic/${id}/feed`;
    void (async () => {
      while (!stop.signal.aborted) {
        await follow(url, cookie, stop.signal, (text) => seen.push(JSON.parse(text))).catch(
          () => {}
        );
      }
    })();
    return { now: () => seen[seen.length - 1] };
  }

  test('carry a room and a course through the death of one, and stop cleanly', async () => {
    const { id } = (await askNode(up.proxy, '/api/guide/clinic', { minutes: 45 }, cookie)).answer;
    const screen = screenOf(id);
    await until(() => screen.now() !== undefined);
    const code = await codeOf(up.proxy, id, cookie);
    for (let to = 1; screen.now().shown.kind !== 'predict'; to++) {
      await askNode(up.proxy, `/api/guide/clinic/${id}`, { do: 'go', to }, cookie);
      await until(() => screen.now().part === `${to}.1`);
    }
    const { part, shown } = screen.now();
    const phones = Array.from({ length: 4 }, newToken);
    const vote = async (base: string, token: string, id = newToken()) => {
      await askNode(base, `/api/clinic/${code}/join`, { token });
      const answer = { kind: 'vote', id, part, option: shown.options?.[0].id };
      return askNode(base, `/api/clinic/${code}/answer`, { token, answer });
    };

    // The screen follows one of the two: by each of them comes a vote, so one crosses over.
    for (const [i, { base }] of up.nodes.entries()) {
      await vote(base, phones[i]);
      await until(() => screen.now().answered === i + 1);
    }

    const homework = await newHomework(up.proxy, cookie);
    const key = { share: homework.share, token: newToken() };
    const sent = { ...tryOf(homework.challenge), id: newToken() };
    await askNode(up.nodes[0].base, '/api/homework/enter', { ...key, name: 'Ina' });
    const first = await askNode(up.nodes[0].base, '/api/homework/send', { ...key, sent });

    process.kill(up.nodes[0].pid, 'SIGKILL');
    const again = await asPhone(() => askNode(up.proxy, '/api/homework/send', { ...key, sent }));
    expect(again.answer).toEqual(first.answer);
    const counters = await (await fetch(`${up.nodes[1].base}/metrics`)).text();
    expect(counters).toContain('feltfoot_submissions_total{kind="repeated"} 1');
    const stored = await asPhone(() => linesOf(up.proxy, homework.id, cookie));
    expect(stored).toBe(1);

    for (const token of phones.slice(2)) {
      const vote_id = newToken();
      await asPhone(() => vote(up.proxy, token, vote_id));
    }
    await until(() => screen.now().answered === 4);

    stop.abort();
    const from = performance.now();
    const ended = new Promise((resolve) => script.once('exit', resolve));
    script.kill('SIGINT');
    expect(await ended).toBe(0);
    expect(performance.now() - from).toBeLessThan(3000);
    await expect(fetch(up.proxy)).rejects.toThrow('fetch failed');
  });
});

interface Shown {
  kind: string;
  options?: { id: string }[];
}
