import { fork, type ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** A server in a process of its own. */
export interface LoadNode {
  base: string;
  pid: number | undefined;
  /** Resolves when its process has ended, by whatever cause. */
  gone: Promise<void>;
  memory(): Promise<number>;
  stop(): Promise<void>;
}

const program = fileURLToPath(new URL('load-server.mjs', import.meta.url));

/** @param env where the node keeps its data: FELTFOOT_DATA or DATABASE_URL */
export async function startNode(build: string, env: Record<string, string>): Promise<LoadNode> {
  const child = fork(program, [build], { env: { ...process.env, ...env }, silent: true });
  // What it logs would fill a pipe that nobody reads.
  child.stdout?.resume();
  child.stderr?.resume();
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const { port } = await told<{ port: number }>(child);
  return {
    base: `http://127.0.0.1:${port}`,
    pid: child.pid,
    gone,
    async memory() {
      child.send('memory');
      return (await told<{ memory_bytes: number }>(child)).memory_bytes;
    },
    stop() {
      if (child.connected) child.disconnect();
      return gone;
    }
  };
}

function told<T>(child: ChildProcess): Promise<T> {
  return new Promise((resolve, reject) => {
    child.once('message', (message) => resolve(message as T));
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
  });
}

/**
 * Asks a node. Throws on anything but yes.
 * @param cookie of the guide
 * @param from an address that a proxy in front would have seen, where the node is told of one
 */
export async function askNode(base: string, path: string, body: unknown, cookie = '', from = '') {
  const response = await insist(`${base}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie, 'x-forwarded-for': from },
    body: JSON.stringify(body)
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`${path}: ${response.status} ${text}`);
  const given = response.headers.getSetCookie()[0]?.split(';')[0] ?? '';
  return { answer: JSON.parse(text), cookie: given };
}

const TIMES = 3;

/** A connection that the server has just closed fails; like a phone, it sends the same again. */
async function insist(url: string, how: RequestInit): Promise<Response> {
  for (let time = 1; ; time++) {
    try {
      return await fetch(url, how);
    } catch (error) {
      if (time === TIMES) throw error;
    }
  }
}

export async function newGuide(base: string): Promise<string> {
  return (await askNode(base, '/api/guide/space', { name: 'Load' })).cookie;
}

/** @returns the value below which this share of the values lies */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
