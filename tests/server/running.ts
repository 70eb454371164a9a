import { spawn, type ChildProcess } from 'node:child_process';
import { request, type IncomingHttpHeaders } from 'node:http';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The server as `npm start` runs it, in a process of its own. */
export interface Running {
  base: string;
  /** What it has logged so far. */
  log(): string;
  /** @returns its exit code and how long it took, ms */
  stop(signal: NodeJS.Signals): Promise<{ code: number | null; took_ms: number }>;
}

export async function startServer(env: Record<string, string>): Promise<Running> {
  const all = { ...process.env, DATABASE_URL: '', PORT: '0', HOST: '127.0.0.1', ...env };
  const child: ChildProcess = spawn(process.execPath, ['scripts/start.mjs'], {
    cwd: root,
    env: all,
    stdio: ['ignore', 'pipe', 'pipe']
  });
  let log = '';
  child.stderr?.on('data', (chunk) => (log += chunk));
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const port = await portOf(child);
  return {
    base: `http://127.0.0.1:${port}`,
    log: () => log,
    async stop(signal) {
      const from = performance.now();
      child.kill(signal);
      return { code: await ended, took_ms: performance.now() - from };
    }
  };
}

async function portOf({ stdout }: ChildProcess): Promise<string> {
  if (!stdout) throw new Error('no pipe');
  // Read on to the end, so that no later word finds the pipe broken.
  const lines = createInterface({ input: stdout });
  return new Promise((resolve, reject) => {
    lines.on('line', (line) => {
      const port = /localhost:(\d+)/.exec(line)?.[1];
      if (port) resolve(port);
    });
    lines.on('close', () => reject(new Error('the server ended before it was up')));
  });
}

interface Sent {
  method?: string;
  path: string;
  headers?: Record<string, string>;
  body?: string | Buffer;
}
export interface Answer {
  status: number;
  headers: IncomingHttpHeaders;
  body: string;
}

/** fetch() lets nobody choose the Host header, nor see an answer that comes before all is sent. */
export function askRaw(base: string, { method = 'GET', path, headers, body }: Sent) {
  const { hostname, port } = new URL(base);
  return new Promise<Answer>((resolve, reject) => {
    const asked = request({ hostname, port, method, path, headers, agent: false }, (answer) => {
      let text = '';
      const done = () =>
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: text });
      answer.on('data', (chunk) => {
        text += chunk;
        // A feed has no end; its first words do.
        if (answer.headers['content-type'] === 'text/event-stream') {
          done();
          asked.destroy();
        }
      });
      answer.on('end', done);
      answer.on('error', done);
    });
    // A body that is refused breaks off while it is sent; the answer is there all the same.
    let isAnswered = false;
    asked.on('response', () => (isAnswered = true));
    asked.on('error', (error) => isAnswered || reject(error));
    asked.end(body);
  });
}

export function sendJson(base: string, path: string, body: unknown, cookie = '') {
  const headers = { 'content-type': 'application/json', cookie };
  return askRaw(base, { method: 'POST', path, headers, body: JSON.stringify(body) });
}
