import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { jigFor } from '../../src/lib/compute/jobs/jig-for';
import type { Conditions } from '../../src/lib/wire';
import type { GivenTo } from '../../src/lib/compute';
import { findLesson, loadLessons } from '../../src/lib/course';
import { itemOf, SOURCES } from '../../src/lib/course/items';
import type { RodInput } from '../../src/lib/model';
import { contactWhileMoving, DataError, describeTry, gradeTry } from '../../src/lib/scoring';
import { serverCompute, ServerCompute } from '../../src/lib/server/compute';
import { FakePort } from '../compute/fake-port';

const fixed = SOURCES.find(({ isGenerated, kind }) => !isGenerated && kind === 'choose');
if (!fixed) throw new Error('no fixed question');
const question: GivenTo<'judge'> = {
  given: { item: fixed.item, seed: 0, given: 'none of them' },
  objectives: [fixed.objective]
};
const shallow: Conditions = {
  temperature_C: 16,
  depth_m: 1,
  ground: 'gravel',
  wind: 'calm',
  fish: 'unknown'
};
const ofNothing = { ...question, objectives: [] };

const account = { space: 'reed', address: 'hall' };

/** @param share of each second that the machine has for this process */
function threads(share = 1) {
  const ports: FakePort[] = [];
  const open = () => (ports.push(new FakePort()), ports[ports.length - 1]);
  const asks = new ServerCompute(open, 1, () => (share * performance.now()) / 1000);
  return { asks, ports };
}

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const still: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: 0,
  azimuth_deg: Array.from({ length: 300 }, (_, i) => 60 + i / 30)
};

describe('work off the server’s own thread', () => {
  test('grades a try as the one grader does, and names what is no rod input', async () => {
    const { asks, ports } = threads();
    const graded = asks.ask('grade', { challenge, input: still }, account);
    const none = asks.ask('grade', { challenge, input: { ...still, azimuth_deg: [60] } }, account);
    ports[0].work();
    const { result, grade } = gradeTry(challenge, still);
    const { marks, passed } = grade;
    const { travel_m } = result;
    const { did, why } = describeTry(challenge, { result, grade }, 'metric');
    expect(await graded).toMatchObject({
      ...{ marks, passed, travel_m, contact: contactWhileMoving(result) },
      says: { metric: `${did} ${why}` }
    });
    await expect(none).rejects.toThrow(/^move\.azimuth_deg: .*2.*, got \[60\]/);
  });

  test('takes the tries of a full room at once, and says when to ask again for one too many', async () => {
    const { asks } = threads();
    const refused: unknown[] = [];
    const ofLength = (length: number) => {
      const input = { ...still, azimuth_deg: Array(length).fill(60) };
      asks.ask('grade', { challenge, input }, account).catch((fault) => refused.push(fault));
    };
    for (let i = 0; i < 500; i++) ofLength(1000);
    await new Promise((next) => setImmediate(next));
    expect({ refused, ...asks.state }).toMatchObject({ refused: [], busy: 1, waiting: 499 });
    for (let i = 0; i < 40; i++) ofLength(12_000);
    await new Promise((next) => setImmediate(next));
    expect(refused.length).toBeGreaterThan(0);
    expect(refused[0]).toMatchObject({ status: 503, retryAfter_s: 60 });
  });

  test.each([
    ['in a thread', true],
    ['between two requests, where there is no thread', false]
  ])('says the same %s as at once, faults by their place and value too', async (_, isThread) => {
    const { asks, ports } = threads();
    const ask: typeof serverCompute = isThread ? asks.ask.bind(asks) : serverCompute;
    const { ask: asked, answer } = itemOf(fixed.item, 0);
    if (answer.form !== 'choose') throw new Error('another form than the test is for');
    const { key } = answer;
    const said = answer.options.find(({ id }) => id === key)?.says;
    const verdict = ask('judge', question, account);
    const right = ask('judge', { ...question, given: { ...question.given, given: key } }, account);
    const fault = ask('judge', ofNothing, account);
    const jig = ask('jig', shallow, account);
    ports[0]?.work();
    await Promise.all([
      expect(right).resolves.toEqual({
        objective: fixed.objective,
        right: true,
        says: { ask: asked, given: said, key: said }
      }),
      expect(verdict).rejects.toEqual(
        new DataError('given', 'none of them', 'can be no answer to this question')
      ),
      expect(fault).rejects.toThrow(/^item: is no question of this homework/),
      expect(jig).resolves.toEqual(jigFor(shallow))
    ]);
    expect(ports).toHaveLength(isThread ? 1 : 0);
  });

  describe('in time', () => {
    beforeEach(() => void vi.useFakeTimers());
    afterEach(() => void vi.useRealTimers());

    test('what takes for ever is broken off, its thread ended, and the next has another', async () => {
      const { asks, ports } = threads();
      const endless = asks.ask('judge', question, account).catch((fault: Error) => fault);
      const next = asks.ask('judge', ofNothing, account).catch((fault: Error) => fault);
      await vi.advanceTimersByTimeAsync(11_000);
      expect(await endless).toMatchObject({ status: 422 });
      expect(ports[0].isClosed).toBe(true);
      ports[1].work();
      await vi.advanceTimersByTimeAsync(1000);
      expect(await next).toBeInstanceOf(DataError);
    });

    test('sent again it is refused at once, whoever sends it', async () => {
      const { asks, ports } = threads();
      const endless = asks.ask('judge', question, account).catch((fault: Error) => fault);
      await vi.advanceTimersByTimeAsync(11_000);
      await endless;
      const other = { space: 'sedge', address: 'home' };
      await expect(asks.ask('judge', question, other)).rejects.toMatchObject({ status: 422 });
      expect(ports).toHaveLength(1);
    });

    test('on a machine that is busy with other things a try has its time of processor', async () => {
      const { asks, ports } = threads(1 / 4);
      const slow = asks.ask('judge', ofNothing, account);
      const judged = expect(slow).rejects.toBeInstanceOf(DataError);
      await vi.advanceTimersByTimeAsync(18_000);
      expect(asks.state).toMatchObject({ busy: 1 });
      ports[0].work();
      await judged;
    });

    test('what never gets that much is told to come again, and is taken then', async () => {
      const { asks, ports } = threads(1 / 100);
      const starved = asks.ask('judge', ofNothing, account).catch((fault: Error) => fault);
      await vi.advanceTimersByTimeAsync(41_000);
      expect(await starved).toMatchObject({ status: 503, retryAfter_s: expect.any(Number) });
      expect(ports[0].isClosed).toBe(true);
      const again = asks.ask('judge', ofNothing, account);
      ports[1].work();
      await expect(again).rejects.toBeInstanceOf(DataError);
    });

    test('nobody is left hanging for more than half a minute', async () => {
      const { asks } = threads();
      for (let i = 0; i < 5; i++) {
        const given = { ...question, given: { ...question.given, seed: i } };
        asks.ask('judge', given, account).catch(() => {});
      }
      const last = asks.ask('judge', question, account).catch((fault: Error) => fault);
      await vi.advanceTimersByTimeAsync(30_000);
      expect(await last).toMatchObject({ status: 503, retryAfter_s: expect.any(Number) });
    });
  });

  test('as many are worked on at a time as there are threads', async () => {
    const ports: FakePort[] = [];
    const open = () => (ports.push(new FakePort()), ports[ports.length - 1]);
    const asks = new ServerCompute(open, 3);
    for (let i = 0; i < 5; i++) asks.ask('judge', question, account).catch(() => {});
    expect(ports.map(({ asked }) => asked.length)).toEqual([1, 1, 1]);
    expect(asks.state).toMatchObject({ threads: 3, busy: 3, waiting: 2 });
    for (const port of ports) port.end();
  });

  test('refuses what would wait too long, and takes more once some is judged', async () => {
    const { asks, ports } = threads();
    const waiting = Array.from({ length: 181 }, () =>
      asks.ask('judge', question, account).catch(() => 'judged')
    );
    await expect(asks.ask('judge', question, account)).rejects.toMatchObject({ status: 503 });
    ports[0].work();
    expect(await Promise.all(waiting)).toEqual(Array(181).fill('judged'));
    await expect(asks.ask('judge', ofNothing, account)).rejects.toThrow(DataError);
  });

  test('what no thread could be started for is not in hand', async () => {
    let isBroken = true;
    const port = new FakePort();
    const asks = new ServerCompute(() => {
      if (isBroken) throw new Error('no thread to be had');
      return port;
    });
    for (let i = 0; i < 120; i++) {
      await expect(asks.ask('judge', question, account)).rejects.toThrow('no thread to be had');
    }
    isBroken = false;
    const later = asks.ask('judge', ofNothing, account);
    port.work();
    await expect(later).rejects.toThrow(DataError);
  });

  test('a thread that ends fails what waits, and the next answer starts another', async () => {
    const { asks, ports } = threads();
    const lost = asks.ask('judge', question, account);
    ports[0].end();
    await expect(lost).rejects.toMatchObject({ status: 503 });
    const next = asks.ask('judge', ofNothing, account);
    ports[1].work();
    await expect(next).rejects.toThrow(DataError);
  });
});
