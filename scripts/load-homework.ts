import { findChallenge, loadLessons } from '../src/lib/course';
import { MODEL_VERSION, type RodInput } from '../src/lib/model';
import { parseAssignment } from '../src/lib/practice';
import { MOST } from '../src/lib/wire';
import { gradeTry, type Challenge } from '../src/lib/scoring';
import { askNode, memoryOf, newGuide, quantile, type LoadNode } from './load-nodes';

export interface HomeworkLoad {
  clients: number;
  /** Clients arrived evenly over so long; 0: as fast as the nodes took them. */
  over_s: number;
  /** Tries and answers that clients sent. */
  sent: number;
  lost: number;
  doubled: number;
  /** Clients to whom a node said anything but yes, and what it said first. */
  failed: number;
  fault: string | null;
  /** Tries graded, answers judged and stored a second, all nodes together. */
  sent_per_s: number;
  answer_ms: { p50: number; p95: number; most: number };
  /** Of each node, before the first client and after the last. */
  memory_bytes: { before: number; after: number; growth: number }[];
}

/** What one client sends. */
type Sends = (client: number) => object[];
/** One client's whole visit. @returns how long each answer took, ms */
type Visit = (client: number) => Promise<number[]>;

const TRIES = 3;
/** A question that the model has to work out, and an answer that is always wrong: none of the ruler. */
const QUESTION = { objective: 'one-foot', item: 'mark-drag', given: 0 };
const AT = '2031-05-01T08:00:00.000Z';
const AT_ONCE = 16;
const SAMPLES = 200;
const SECONDS = 1000;

/**
 * Clients who enter and send their tries and an answer, each one twice: as fast as the nodes take them, or spread
 * evenly over `over_s`, each starting at its own moment whether or not the one before has finished.
 */
export async function loadHomework(
  nodes: readonly LoadNode[],
  clients: number,
  over_s: number
): Promise<HomeworkLoad> {
  const main = nodes[0].base;
  const cookie = await newGuide(main);
  const { id, share, challenge } = await newHomework(main, cookie);
  const visit = visitTo(nodes, share, sentBy(challenge));
  const before = await memoryOf(nodes);
  const from = performance.now();
  const visits = over_s > 0 ? spread(clients, over_s, visit) : inLanes(clients, visit);
  const ended = await Promise.allSettled(await visits);
  const took_s = (performance.now() - from) / SECONDS;
  const after = await memoryOf(nodes);
  const answers_ms = ended.flatMap((one) => (one.status === 'fulfilled' ? one.value : []));
  const faults = ended.flatMap((one) => (one.status === 'rejected' ? [String(one.reason)] : []));
  const stored = await linesOf(main, id, cookie);
  const sent = clients * (TRIES + 1);
  return {
    clients,
    over_s,
    sent,
    lost: Math.max(0, sent - stored),
    doubled: Math.max(0, stored - sent),
    failed: faults.length,
    fault: faults[0] ?? null,
    sent_per_s: sent / took_s,
    answer_ms: {
      p50: quantile(answers_ms, 0.5),
      p95: quantile(answers_ms, 0.95),
      most: quantile(answers_ms, 1)
    },
    memory_bytes: before.map((bytes, i) => {
      return { before: bytes, after: after[i], growth: after[i] - bytes };
    })
  };
}

export async function newHomework(base: string, cookie: string) {
  const challenge = findChallenge('exactly-one-foot', loadLessons());
  if (!challenge) throw new Error('the challenge of the load test is gone');
  const task = parseAssignment({
    title: 'Load',
    from: '',
    note: '',
    lessons: [],
    challenges: [challenge],
    objectives: [QUESTION.objective],
    questions: 1,
    tries: TRIES,
    phase: 'seen',
    due: null
  });
  const { id } = (await askNode(base, '/api/guide/homework', { task }, cookie)).answer;
  return { id, share: await shareOf(base, id, cookie), challenge };
}

function visitTo(nodes: readonly LoadNode[], share: string, sends: Sends): Visit {
  return async (client) => {
    const { base } = nodes[client % nodes.length];
    const key = { share, token: `load-client-${String(client).padStart(12, '0')}` };
    const took_ms: number[] = [];
    await askNode(base, '/api/homework/enter', { ...key, name: `Client ${client}` });
    const all = sends(client);
    for (const sent of [...all, ...all]) {
      const at = performance.now();
      await askNode(base, '/api/homework/send', { ...key, sent });
      took_ms.push(performance.now() - at);
    }
    return took_ms;
  };
}

function sentBy(challenge: Challenge): Sends {
  const made = tryOf(challenge);
  const tries = Array.from({ length: TRIES }, (_, n) => ({ ...made, id: idOf(`try-${n}`) }));
  return (client) => [...tries, { ...answerTo((client % MOST.seed) + 1), id: idOf('answer') }];
}

const idOf = (name: string) => `load-${name}`.padEnd(20, '0');

function answerTo(seed: number) {
  const { item, given } = QUESTION;
  const said = { item, seed, given, right: false, report: 'guessed' };
  return { kind: 'answer', ...said, model: MODEL_VERSION, at: AT };
}

/** Starts each visit at its own moment. */
async function spread(clients: number, over_s: number, visit: Visit) {
  const from = performance.now();
  const visits: Promise<number[]>[] = [];
  for (let client = 0; client < clients; client++) {
    const due_ms = from + (client * over_s * SECONDS) / clients - performance.now();
    if (due_ms > 0) await new Promise((resolve) => setTimeout(resolve, due_ms));
    const begun = visit(client);
    // Looked at when all have ended; a failure before that is no unheard one.
    begun.catch(() => {});
    visits.push(begun);
  }
  return visits;
}

/** So many visits at a time, one after the other in each lane. */
async function inLanes(clients: number, visit: Visit) {
  const visits: Promise<number[]>[] = [];
  const lane = async () => {
    while (visits.length < clients) {
      const begun = visit(visits.length);
      visits.push(begun);
      await begun.catch(() => {});
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, lane));
  return visits;
}

export function tryOf(challenge: Challenge) {
  const { elevation_deg, azimuth_deg } = challenge.start;
  const turned = Array.from({ length: SAMPLES }, (_, i) => azimuth_deg + (9 * i) / SAMPLES);
  const input: RodInput = { kind: 'rod_input', rate_Hz: 100, elevation_deg, azimuth_deg: turned };
  const { marks } = gradeTry(challenge, input).grade;
  return { kind: 'try', challenge: challenge.id, input, model: MODEL_VERSION, at: AT, marks };
}

async function shareOf(base: string, id: string, cookie: string): Promise<string> {
  const page = await fetch(`${base}/guide/${id}`, { headers: { cookie } });
  const share = /task#([A-Za-z0-9_-]{22,64})/.exec(await page.text())?.[1];
  if (!share) throw new Error('the page of the homework shows no link');
  return share;
}

export async function linesOf(base: string, id: string, cookie: string): Promise<number> {
  const table = await fetch(`${base}/api/guide/homework/${id}/export`, { headers: { cookie } });
  if (!table.ok) throw new Error(`export: ${table.status} ${await table.text()}`);
  return (await table.text()).trimEnd().split('\r\n').length - 1;
}
