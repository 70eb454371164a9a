import { fork, type ChildProcess } from 'node:child_process';
import { Agent, get, request, type IncomingMessage } from 'node:http';
import { text as textOf } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';

/** What a process has spent since its start. */
export interface Spent {
  memory_bytes: number;
  /** Of all its threads. */
  cpu_ms: number;
}

/** A server in a process of its own. */
export interface LoadNode {
  base: string;
  pid: number | undefined;
  /** Resolves when its process has ended, by whatever cause. */
  gone: Promise<void>;
  spent(): Promise<Spent>;
  stop(): Promise<void>;
}

const program = fileURLToPath(new URL('load-server.mjs', import.meta.url));

/**
 * @param env where the node keeps its data: FELTFOOT_DATA or DATABASE_URL
 * @param profiles a folder for its CPU profile, written when it stops
 */
export async function startNode(
  build: string,
  env: Record<string, string>,
  profiles?: string
): Promise<LoadNode> {
  const execArgv = profiles ? ['--cpu-prof', `--cpu-prof-dir=${profiles}`] : [];
  const child = fork(program, [build], {
    env: { ...process.env, ...env },
    execArgv,
    silent: true
  });
  // What it logs would fill a pipe that nobody reads.
  child.stdout?.resume();
  child.stderr?.resume();
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const { port } = await told<{ port: number }>(child);
  return {
    base: `http://127.0.0.1:${port}`,
    pid: child.pid,
    gone,
    spent() {
      child.send('spent');
      return told<Spent>(child);
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

/** What the nodes have spent since their start, ms of one core. */
export async function cpuOf(nodes: readonly LoadNode[]): Promise<number> {
  const spent = await Promise.all(nodes.map((node) => node.spent()));
  return spent.reduce((sum, { cpu_ms }) => sum + cpu_ms, 0);
}

export async function memoryOf(nodes: readonly LoadNode[]): Promise<number[]> {
  return (await Promise.all(nodes.map((node) => node.spent()))).map((spent) => spent.memory_bytes);
}

/** Plain requests: `fetch` takes the generator twice as long, on the cores that the server needs. */
const agent = new Agent({ keepAlive: true });

/**
 * Asks a node. Throws on anything but yes.
 * @param cookie of the guide
 * @param from an address that a proxy in front would have seen, where the node is told of one
 */
export async function askNode(base: string, path: string, body: unknown, cookie = '', from = '') {
  const headers = { 'content-type': 'application/json', cookie, 'x-forwarded-for': from };
  const response = await insist(`${base}${path}`, headers, JSON.stringify(body));
  const text = await textOf(response);
  if (response.statusCode !== 200) throw new Error(`${path}: ${response.statusCode} ${text}`);
  const given = response.headers['set-cookie']?.[0].split(';')[0] ?? '';
  return { answer: JSON.parse(text), cookie: given };
}

const TIMES = 3;

/** A connection that the server has just closed fails; like a phone, it sends the same again. */
async function insist(url: string, headers: Record<string, string>, body: string) {
  for (let time = 1; ; time++) {
    try {
      return await sent(url, headers, body);
    } catch (error) {
      if (time === TIMES) throw error;
    }
  }
}

function sent(url: string, headers: Record<string, string>, body: string) {
  return new Promise<IncomingMessage>((resolve, reject) => {
    const length = { 'content-length': Buffer.byteLength(body) };
    const how = { method: 'POST', agent, headers: { ...headers, ...length } };
    request(url, how, resolve).once('error', reject).end(body);
  });
}

/** Holds a feed open as a phone does, and counts what comes; gives what ends it. */
export function listen(url: string, count: (bytes: number) => void): () => void {
  const asked = get(url, { agent: false }, (response) => {
    response.on('data', ({ length }: Buffer) => count(length));
    response.on('error', () => {});
  });
  asked.on('error', () => {});
  return () => void asked.destroy();
}

export async function newGuide(base: string): Promise<string> {
  return (await askNode(base, '/api/guide/space', { name: 'Load' })).cookie;
}

/** @returns the value below which this share of the values lies */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
