import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { MODEL_VERSION } from '../../src/lib/model';
import { gradeTry } from '../../src/lib/scoring';
import {
  assignmentOf,
  createAssignment,
  extend,
  setClosed,
  type Assignment
} from '../../src/lib/server/assignments';
import { enter, forgetClient } from '../../src/lib/server/clients';
import { tryTable } from '../../src/lib/server/export';
import { adviceFor, errorsOf, rulerOf } from '../../src/lib/server/hand-ruler';
import { takeSent, type SentTry } from '../../src/lib/server/homework';
import { progressOf } from '../../src/lib/server/progress';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { parseTask } from '../../src/lib/server/task';
import { newToken } from '../../src/lib/server/token';
import { evenHand, sampleChallenge, sampleTask } from './samples';
import { sqlite } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
let server: Awaited<ReturnType<typeof sqlite.start>>;
let store: Store;
let guide: Guide;
let homework: Assignment;
const phone = newToken();

beforeEach(async () => {
  server = await sqlite.start();
  store = await openStore(await server.fresh());
  const cookie = await startSession(store.db, await createSpace(store.db, 'Reed', NOW), NOW);
  guide = (await guideOf(store.db, cookie, NOW)) as Guide;
  const id = await createAssignment(store.db, guide, sampleTask, NOW);
  homework = (await assignmentOf(store.db, guide, id)) as Assignment;
});
afterEach(async () => {
  await store.close();
  await server.stop();
});

function tried(id: string, turn_deg: number, marks?: number): SentTry {
  const input = evenHand(sampleChallenge, turn_deg, 3);
  const { grade } = gradeTry(sampleChallenge, input);
  const challenge = sampleChallenge.id;
  return {
    kind: 'try',
    id: id.padEnd(16, '0'),
    challenge,
    input,
    model: MODEL_VERSION,
    at: NOW,
    marks: marks ?? grade.marks
  };
}

const send = (sent: Parameters<typeof takeSent>[3]) =>
  takeSent(store.db, homework.share, phone, sent, NOW);
const enterAs = (name: string) => enter(store.db, homework.share, phone, name, NOW);
const again = async () => (await assignmentOf(store.db, guide, homework.id)) as Assignment;

describe('homework', () => {
  test('is graded again here, and other marks than these are flagged', async () => {
    await enterAs('Ina');
    await send(tried('honest', 9));
    await send(tried('flattered', 30, 100));
    const [ina] = await progressOf(store.db, homework);
    const graded = ina.challenges[0].tries.map((one) => one.graded);
    expect(graded.map(({ agrees }) => agrees).sort()).toEqual([false, true]);
    expect(ina.disagreements).toBe(1);
    expect(graded.find(({ agrees }) => !agrees)?.marks).toBe(
      gradeTry(sampleChallenge, evenHand(sampleChallenge, 30, 3)).grade.marks
    );
  });

  test('a phone that enters twice is one client, under its first name', async () => {
    const first = await enterAs('Ina');
    const second = await enterAs('Somebody else');
    expect(second.client).toEqual(first.client);
    expect(await progressOf(store.db, homework)).toHaveLength(1);
  });

  test('is done when every challenge has its tries and every lesson its end', async () => {
    await enterAs('Ina');
    for (const id of ['a', 'b', 'c']) await send(tried(id, 9));
    expect((await progressOf(store.db, homework))[0]).toMatchObject({ isDone: false });
    await send({ kind: 'finished', id: 'd'.repeat(16), lesson: 'one-foot', at: NOW });
    expect((await progressOf(store.db, homework))[0]).toMatchObject({ isDone: true });
  });

  test('that is closed takes nothing new, yet answers again to what it has taken', async () => {
    await enterAs('Ina');
    const receipt = await send(tried('a', 9));
    await setClosed(store.db, guide, homework.id, NOW);
    await expect(send(tried('b', 9))).rejects.toMatchObject({ status: 410 });
    expect(await send(tried('a', 9))).toEqual({ ...receipt, kind: 'repeated' });
    await extend(store.db, guide, homework.id, '2031-06-01', NOW);
    expect(await send(tried('b', 9))).toMatchObject({ kind: 'accepted' });
    expect((await again()).task.due).toBe('2031-06-01');
  });

  test.each([
    ['a challenge of another homework', () => ({ ...tried('a', 9), challenge: 'other' }), 422],
    [
      'a lesson that was not set',
      () => ({ kind: 'finished' as const, id: 'f'.repeat(16), lesson: 'other', at: NOW }),
      422
    ]
  ])('refuses %s', async (_what, sent, status) => {
    await enterAs('Ina');
    await expect(send(sent())).rejects.toMatchObject({ status });
  });

  test('takes nothing from a phone that has not entered, nor by a wrong link', async () => {
    await expect(send(tried('a', 9))).rejects.toMatchObject({ status: 403 });
    await expect(enter(store.db, newToken(), phone, 'Ina', NOW)).rejects.toMatchObject({
      status: 404
    });
  });

  test('forgets a client at once and wholly', async () => {
    const { client } = await enterAs('Ina');
    await send(tried('a', 9));
    await forgetClient(store.db, homework.id, client.id);
    expect(await progressOf(store.db, homework)).toEqual([]);
    expect(await store.db.selectFrom('submissions').selectAll().execute()).toEqual([]);
  });

  test('goes into a table with one line a try, names made harmless', async () => {
    await enterAs('=cmd()');
    await send(tried('a', 9));
    const lines = tryTable(await progressOf(store.db, homework))
      .trimEnd()
      .split('\r\n');
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/^"'=cmd\(\)","exactly-one-foot"/);
  });
});

describe('a task', () => {
  test.each([
    ['title', { title: ' ' }],
    ['tries', { tries: 0 }],
    ['due', { due: 'soon' }],
    ['challenges', { challenges: Array.from({ length: 13 }, () => sampleChallenge) }]
  ])('is refused for its %s', (path, change) => {
    expect(() => parseTask({ ...sampleTask, ...change })).toThrow(new RegExp(`^${path}`));
  });

  test('is kept with the whole challenge', () => {
    expect(parseTask(JSON.parse(JSON.stringify(sampleTask)))).toEqual(sampleTask);
  });
});

describe('a hand’s ruler', () => {
  test('keeps bias and spread apart', () => {
    const { bias_m, spread_m } = errorsOf([0.4, 0.5, 0.6], 0.3);
    expect(bias_m).toBeCloseTo(0.2, 12);
    // The standard deviation with 1/k: √((0.1² + 0 + 0.1²) / 3).
    expect(spread_m).toBeCloseTo(Math.sqrt(0.02 / 3), 12);
  });

  test('says nothing of a hand from two tries', () => {
    expect(rulerOf(sampleChallenge, [0.3, 0.4])).toBeNull();
  });

  test.each([
    [{ bias_m: 0.2, spread_m: 0.02 }, 'shorter'],
    [{ bias_m: -0.2, spread_m: 0.02 }, 'longer'],
    [{ bias_m: 0.06, spread_m: 0.2 }, 'slower'],
    [{ bias_m: 0.01, spread_m: 0.01 }, 'harder']
  ])('%o calls for “%s”', (errors, advice) => {
    expect(adviceFor({ target_m: 0.3, band_m: 0.05, tries: 5, ...errors })).toBe(advice);
  });
});
