import { monitorEventLoopDelay, type IntervalHistogram } from 'node:perf_hooks';
import { askNode, cpuOf, listen, newGuide, quantile, type LoadNode } from './load-nodes';

export interface ClinicLoad {
  phones: number;
  votes: number;
  lost: number;
  doubled: number;
  /** From a vote's sending until the screen counts it, ms. */
  vote_to_screen_ms: { p50: number; p95: number; most: number };
  /** How late the generator came to its own work while votes were sent: its part of the wait, ms. */
  generator_late_ms: { p50: number; p95: number };
  /** What one seat cost (join and feed), and one vote (sent twice, seen by all), ms of one core. */
  cpu_ms: { seat: number; vote: number; generator_vote: number };
  /** What one phone heard by its feed while the room voted and was told the answer. */
  heard_bytes_each: number;
}

interface Screen {
  part: string;
  answered: number;
  counts: Record<string, number> | null;
  shown: { kind: string; options?: { id: string }[] };
}

const SECONDS = 1000;
/** A room does not press at the same instant: votes come within so long, ms. */
const WITHIN_MS = 3 * SECONDS;
const PATIENCE_MS = 30 * SECONDS;

/** How often the generator looks whether it is late, ms. */
const LATE_EVERY_MS = 10;
const lateAt = (late: IntervalHistogram, percentile: number) =>
  Math.max(0, late.percentile(percentile) / 1e6 - LATE_EVERY_MS);

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Follows a feed until it is told to stop. */
export async function follow(
  url: string,
  cookie: string,
  stop: AbortSignal,
  hear: (text: string) => void
) {
  const response = await fetch(url, { headers: { cookie }, signal: stop });
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  let text = '';
  for (;;) {
    const { value, done } = (await reader?.read()) ?? { done: true };
    if (done) return;
    const parts = (text + value).split('\n\n');
    text = parts.pop() ?? '';
    for (const part of parts) if (part.startsWith('data: ')) hear(part.slice(6));
  }
}

/** Behind one address: more at once are a crowd, and would have to wait. */
const PHONES_A_HALL = 500;

/** A room of phones that all vote, each vote sent twice, with everyone's feed open. */
export async function loadClinic(nodes: readonly LoadNode[], phones: number): Promise<ClinicLoad> {
  const main = nodes[0].base;
  const cookie = await newGuide(main);
  const { id } = (await askNode(main, '/api/guide/clinic', { minutes: 45 }, cookie)).answer;
  const act = (action: unknown) => askNode(main, `/api/guide/clinic/${id}`, action, cookie);
  const stop = new AbortController();
  const screens: { at_ms: number; view: Screen }[] = [];
  const followed = [
    follow(`${main}/api/guide/clinic/${id}/feed`, cookie, stop.signal, (text) => {
      screens.push({ at_ms: performance.now(), view: JSON.parse(text) });
    })
  ];
  const now = () => screens[screens.length - 1]?.view;
  await until(() => screens.length > 0);
  const code = await codeOf(main, id, cookie);
  const seats = Array.from({ length: phones }, (_, i) => {
    return {
      base: nodes[i % nodes.length].base,
      token: `load-phone-${String(i).padStart(13, '0')}`,
      hall: `10.0.0.${Math.floor(i / PHONES_A_HALL)}`
    };
  });
  const cpuAtFirst = await cpuOf(nodes);
  let heard_bytes = 0;
  const hangUp: (() => void)[] = [];
  await inGroups(seats, 25, async ({ base, token, hall }) => {
    const { seat } = (await askNode(base, `/api/clinic/${code}/join`, { token }, '', hall)).answer;
    const feed = `${base}/api/clinic/${code}/feed?seat=${seat}`;
    hangUp.push(listen(feed, (bytes) => (heard_bytes += bytes)));
  });
  for (let to = 1; now().shown.kind !== 'predict'; to++) {
    await act({ do: 'go', to });
    await until(() => now().part === `${to}.1`);
  }
  const { part, shown } = now();
  const options = shown.options?.map((option) => option.id) ?? [];
  const cpuOfSeats = (await cpuOf(nodes)) - cpuAtFirst;
  const heardBefore = heard_bytes;
  const cpuBefore = await cpuOf(nodes);
  const ownBefore = process.cpuUsage();
  const late = monitorEventLoopDelay({ resolution: LATE_EVERY_MS });
  late.enable();
  const sent_ms: number[] = [];
  await Promise.all(
    seats.map(async ({ base, token }, i) => {
      await pause((i * WITHIN_MS) / phones);
      const option = options[i % options.length];
      const answer = { kind: 'vote', id: `load-vote-${String(i).padStart(10, '0')}`, part, option };
      sent_ms.push(performance.now());
      const send = () => askNode(base, `/api/clinic/${code}/answer`, { token, answer });
      await send();
      await send();
    })
  );
  await until(() => now().answered === phones);
  late.disable();
  const own = process.cpuUsage(ownBefore);
  const cpuOfVotes = (await cpuOf(nodes)) - cpuBefore;
  const waits = waitsOf(sent_ms, screens, part);
  await act({ do: 'hold' });
  await act({ do: 'reveal' });
  await until(() => now().counts !== null);
  const counts = now().counts ?? {};
  const wrong = options.map((option, i) => {
    const asked = Math.ceil((phones - i) / options.length);
    return (counts[option] ?? 0) - asked;
  });
  stop.abort();
  for (const end of hangUp) end();
  await Promise.allSettled(followed);
  return {
    phones,
    votes: Object.values(counts).reduce((sum, count) => sum + count, 0),
    lost: -wrong.filter((off) => off < 0).reduce((sum, off) => sum + off, 0),
    doubled: wrong.filter((off) => off > 0).reduce((sum, off) => sum + off, 0),
    vote_to_screen_ms: {
      p50: quantile(waits, 0.5),
      p95: quantile(waits, 0.95),
      most: Math.max(...waits)
    },
    generator_late_ms: { p50: lateAt(late, 50), p95: lateAt(late, 95) },
    cpu_ms: {
      seat: cpuOfSeats / phones,
      vote: cpuOfVotes / phones,
      generator_vote: (own.user + own.system) / 1000 / phones
    },
    heard_bytes_each: (heard_bytes - heardBefore) / phones
  };
}

/** The n-th vote that was sent is on the screen when the screen counts n. */
function waitsOf(sent_ms: number[], screens: { at_ms: number; view: Screen }[], part: string) {
  const ours = screens.filter(({ view }) => view.part === part);
  return [...sent_ms]
    .sort((a, b) => a - b)
    .map((at, i) => {
      const seen = ours.find(({ view }) => view.answered >= i + 1);
      return (seen?.at_ms ?? Infinity) - at;
    });
}

export async function codeOf(base: string, id: string, cookie: string): Promise<string> {
  const page = await fetch(`${base}/clinic/${id}`, { headers: { cookie } });
  const code = /clinic#([2-9A-Z]{6})|Clinic ([2-9A-Z]{6}) ·/.exec(await page.text());
  if (!code) throw new Error('the screen shows no code');
  return code[1] ?? code[2];
}

async function inGroups<T>(all: readonly T[], size: number, work: (one: T) => Promise<void>) {
  for (let i = 0; i < all.length; i += size) await Promise.all(all.slice(i, i + size).map(work));
}

export async function until(isSo: () => boolean): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  while (!isSo()) {
    if (performance.now() > end) throw new Error('waited in vain for the screen');
    await pause(10);
  }
}
