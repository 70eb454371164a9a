import { createServer, request, type IncomingMessage, type ServerResponse } from 'node:http';
import { connect, type AddressInfo, type Socket } from 'node:net';
import { securityHeaders } from '../server/headers.mjs';
import { stopServer } from '../server/serve.mjs';

export interface Proxy {
  port: number;
  stop(): Promise<void>;
}

/** What belongs to one connection and never goes on to the next. */
const HOP = ['connection', 'keep-alive', 'proxy-connection', 'upgrade', 'te'];

/**
 * The least that a proxy before several nodes must do: it asks them in turn, passes the Host on, holds
 * nothing back, and goes on with the others when one is down. Only who has not been asked yet is
 * replaced by another node: whether an answer that broke off was acted on, the sender alone can find
 * out, by sending the same again.
 * @param host to listen on; none means all
 * @param nodes their ports on loopback
 */
export async function startProxy(
  nodes: readonly number[],
  port: number,
  host?: string
): Promise<Proxy> {
  let turn = 0;
  const server = createServer(async (asked, answer) => {
    const first = turn++ % nodes.length;
    const socket = await firstUp([...nodes.slice(first), ...nodes.slice(0, first)]);
    if (socket) passOn(asked, answer, socket);
    else refuse(answer, 503, 'No node answers just now. Nothing was taken; try again.');
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port, host }, resolve);
  });
  const address = server.address() as AddressInfo;
  return { port: address.port, stop: () => stopServer(server) };
}

/** A connection to the first of these ports that takes one. */
async function firstUp(ports: readonly number[]): Promise<Socket | undefined> {
  for (const port of ports) {
    const socket = connect({ port, host: '127.0.0.1' });
    const isUp = await new Promise<boolean>((resolve) => {
      socket.once('connect', () => resolve(true));
      socket.once('error', () => resolve(false));
    });
    if (isUp) return socket;
  }
  return undefined;
}

function passOn(asked: IncomingMessage, answer: ServerResponse, socket: Socket): void {
  const { method, url: path } = asked;
  const headers = {
    ...passed(asked.headers),
    'x-forwarded-for': wayOf(asked),
    connection: 'close'
  };
  const onward = request({ method, path, headers, createConnection: () => socket });
  onward.on('response', (given) => {
    answer.writeHead(given.statusCode ?? 502, passed(given.headers));
    // A feed begins with nothing to say: its head must not wait for its first word.
    answer.flushHeaders();
    given.pipe(answer);
    given.on('error', () => answer.destroy());
  });
  onward.on('error', () => {
    if (answer.headersSent) answer.destroy();
    else refuse(answer, 502, 'The node is gone before it answered. Send the same again.');
  });
  answer.on('close', () => onward.destroy());
  asked.pipe(onward);
}

function passed<T extends IncomingMessage['headers']>(headers: T): T {
  const kept = Object.entries(headers).filter(([name]) => !HOP.includes(name));
  return Object.fromEntries(kept) as T;
}

/** The addresses that a request came by, the last one seen by ourselves. */
function wayOf({ headers, socket }: IncomingMessage): string {
  const before = headers['x-forwarded-for'] ?? [];
  return [before, socket.remoteAddress ?? ''].flat().join(', ');
}

function refuse(answer: ServerResponse, status: number, why: string): void {
  answer.writeHead(status, { ...securityHeaders, 'content-type': 'text/plain; charset=utf-8' });
  answer.end(`${why}\n`);
}
