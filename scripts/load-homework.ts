import { findChallenge, loadLessons } from '../src/lib/course';
import { MODEL_VERSION, type RodInput } from '../src/lib/model';
import { gradeTry, type Challenge } from '../src/lib/scoring';
import { askNode, newGuide, quantile, type LoadNode } from './load-nodes';

export interface HomeworkLoad {
  clients: number;
  tries: number;
  lost: number;
  doubled: number;
  /** Tries graded and stored a second, all nodes together. */
  tries_per_s: number;
  answer_ms: { p50: number; p95: number };
}

const TRIES = 3;
const AT_ONCE = 16;
const SAMPLES = 200;

/** Clients who enter and send their tries, each one twice, as fast as the nodes take them. */
export async function loadHomework(
  nodes: readonly LoadNode[],
  clients: number
): Promise<HomeworkLoad> {
  const main = nodes[0].base;
  const cookie = await newGuide(main);
  const challenge = findChallenge('exactly-one-foot', loadLessons());
  if (!challenge) throw new Error('the challenge of the load test is gone');
  const task = {
    title: 'Load',
    note: '',
    lessons: [],
    challenges: [challenge],
    tries: TRIES,
    due: null
  };
  const { id } = (await askNode(main, '/api/guide/homework', { task }, cookie)).answer;
  const share = await shareOf(main, id, cookie);
  const sent = tryOf(challenge);
  const answers_ms: number[] = [];
  const from = performance.now();
  const queue = Array.from({ length: clients }, (_, i) => i);
  const work = async () => {
    for (let i = queue.shift(); i !== undefined; i = queue.shift()) {
      const { base } = nodes[i % nodes.length];
      const key = { share, token: `load-client-${String(i).padStart(12, '0')}` };
      await askNode(base, '/api/homework/enter', { ...key, name: `Client ${i}` });
      for (let n = 0; n < 2 * TRIES; n++) {
        const at = performance.now();
        const one = { ...sent, id: `load-try-${n % TRIES}`.padEnd(20, '0') };
        await askNode(base, '/api/homework/send', { ...key, sent: one });
        answers_ms.push(performance.now() - at);
      }
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  const took_s = (performance.now() - from) / 1000;
  const stored = await linesOf(main, id, cookie);
  const tries = clients * TRIES;
  return {
    clients,
    tries,
    lost: Math.max(0, tries - stored),
    doubled: Math.max(0, stored - tries),
    tries_per_s: tries / took_s,
    answer_ms: { p50: quantile(answers_ms, 0.5), p95: quantile(answers_ms, 0.95) }
  };
}

function tryOf(challenge: Challenge) {
  const { elevation_deg, azimuth_deg } = challenge.start;
  const turned = Array.from({ length: SAMPLES }, (_, i) => azimuth_deg + (9 * i) / SAMPLES);
  const input: RodInput = { kind: 'rod_input', rate_Hz: 100, elevation_deg, azimuth_deg: turned };
  const { marks } = gradeTry(challenge, input).grade;
  const at = '2031-05-01T08:00:00.000Z';
  return { kind: 'try', challenge: challenge.id, input, model: MODEL_VERSION, at, marks };
}

async function shareOf(base: string, id: string, cookie: string): Promise<string> {
  const page = await fetch(`${base}/guide/${id}`, { headers: { cookie } });
  const share = /task#([A-Za-z0-9_-]{22,64})/.exec(await page.text())?.[1];
  if (!share) throw new Error('the page of the homework shows no link');
  return share;
}

async function linesOf(base: string, id: string, cookie: string): Promise<number> {
  const table = await fetch(`${base}/api/guide/homework/${id}/export`, { headers: { cookie } });
  return (await table.text()).trimEnd().split('\r\n').length - 1;
}
