import { describe, expect, test } from 'vitest';
import { jigFor } from '../../src/lib/compute/jobs/jig';
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

function threads() {
  const ports: FakePort[] = [];
  const asks = new ServerCompute(() => {
    const port = new FakePort();
    ports.push(port);
    return port;
  });
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
    const graded = asks.ask('grade', { challenge, input: still });
    const none = asks.ask('grade', { challenge, input: { ...still, azimuth_deg: [60] } });
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

  test('takes the tries of a full room at once, and fewer the longer they are', async () => {
    const { asks, ports } = threads();
    const ofLength = (length: number) => {
      const input = { ...still, azimuth_deg: Array(length).fill(60) };
      return asks.ask('grade', { challenge, input });
    };
    const room = Array.from({ length: 500 }, () => ofLength(1000).catch(() => 'given up'));
    const long = Array.from({ length: 8 }, () => ofLength(12_000).catch(() => 'given up'));
    await expect(ofLength(12_000)).rejects.toMatchObject({ status: 503 });
    ports[0].end();
    expect(await Promise.all([...room, ...long])).toEqual(Array(508).fill('given up'));
  });

  test.each([
    ['in a thread', true],
    ['between two requests, where there is no thread', false]
  ])('says the same %s as at once, faults by their place and value too', async (_, isThread) => {
    const { asks, ports } = threads();
    const ask: typeof serverCompute = isThread
      ? (job, given) => asks.ask(job, given)
      : serverCompute;
    const key = itemOf(fixed.item, 0).answer.key as string;
    const verdict = ask('judge', question);
    const right = ask('judge', { ...question, given: { ...question.given, given: key } });
    const fault = ask('judge', ofNothing);
    const jig = ask('jig', shallow);
    ports[0]?.work();
    await Promise.all([
      expect(right).resolves.toEqual({ objective: fixed.objective, right: true }),
      expect(verdict).rejects.toEqual(
        new DataError('given', 'none of them', 'can be no answer to this question')
      ),
      expect(fault).rejects.toThrow(/^item: is no question of this homework/),
      expect(jig).resolves.toEqual(jigFor(shallow))
    ]);
    expect(ports).toHaveLength(isThread ? 1 : 0);
  });

  test('refuses what would wait too long, and takes more once some is judged', async () => {
    const { asks, ports } = threads();
    const waiting = Array.from({ length: 120 }, () =>
      asks.ask('judge', question).catch(() => 'judged')
    );
    await expect(asks.ask('judge', question)).rejects.toMatchObject({ status: 503 });
    ports[0].work();
    expect(await Promise.all(waiting)).toEqual(Array(120).fill('judged'));
    await expect(asks.ask('judge', ofNothing)).rejects.toThrow(DataError);
  });

  test('what no thread could be started for is not in hand', async () => {
    let isBroken = true;
    const port = new FakePort();
    const asks = new ServerCompute(() => {
      if (isBroken) throw new Error('no thread to be had');
      return port;
    });
    for (let i = 0; i < 120; i++) {
      await expect(asks.ask('judge', question)).rejects.toThrow('no thread to be had');
    }
    isBroken = false;
    const later = asks.ask('judge', ofNothing);
    port.work();
    await expect(later).rejects.toThrow(DataError);
  });

  test('a thread that ends fails what waits, and the next answer starts another', async () => {
    const { asks, ports } = threads();
    const lost = asks.ask('judge', question);
    ports[0].end();
    await expect(lost).rejects.toMatchObject({ status: 503 });
    const next = asks.ask('judge', ofNothing);
    ports[1].work();
    await expect(next).rejects.toThrow(DataError);
  });
});
