import { describe, expect, test, vi } from 'vitest';
import { Asker, BrokeOff } from '../../src/lib/compute';
import { findLesson, loadLessons } from '../../src/lib/course';
import { itemOf } from '../../src/lib/course/items';
import { solveCorrection } from '../../src/lib/scoring';
import { fit, parseSession, sessionInputOf } from '../../src/lib/fit';
import { aSession } from '../practice/samples';
import { FakePort } from './fake-port';

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const SESSION = {
  gear: aSession('session-of-one-day').gear,
  tests: aSession('session-of-one-day').tests,
  known: { reach_m: 1.9, elevation_deg: 0, slack_m: 0.15 },
  drops: []
};
const QUESTION = { item: 'mark-drag', seed: 7 };

function asking({ again = 1, kinds = 1 } = {}) {
  const ports: FakePort[] = [];
  const opened: number[] = [];
  const open = (kind: number) => () => {
    const port = new FakePort();
    opened.push(kind);
    ports.push(port);
    return port;
  };
  const asker = new Asker(
    Array.from({ length: kinds }, (_, kind) => open(kind)),
    again
  );
  return { asker, ports, opened };
}

/** Lets everything happen that does not wait for the clock. */
const settled = () => new Promise((next) => setTimeout(next, 20));

describe('a job', () => {
  test('comes to what the same call comes to here', async () => {
    const { asker, ports } = asking();
    const correction = asker.ask('correct', challenge);
    const question = asker.ask('question', QUESTION);
    ports[0].work();
    expect(await correction).toEqual(solveCorrection(challenge));
    expect(await question).toEqual(itemOf(QUESTION.item, QUESTION.seed));
  });

  test('tells how far it is, ever further and never done before it is', async () => {
    const { asker, ports } = asking();
    const shares: number[] = [];
    const correction = asker.ask('correct', challenge, { onprogress: (s) => shares.push(s) });
    ports[0].work();
    await correction;
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBeLessThan(1);
  });

  test('that is done in one go tells how far it is, and comes to what the same call comes to', async () => {
    const { asker, ports } = asking();
    const shares: number[] = [];
    const fitted = asker.ask('fit', SESSION, { onprogress: (share) => shares.push(share) });
    ports[0].work();
    expect(await fitted).toEqual(fit(parseSession(sessionInputOf(SESSION))));
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  test('that is done in one go and cancelled ends its thread, and what else waits begins in another', async () => {
    const { asker, ports } = asking();
    const stop = new AbortController();
    const fitted = asker.ask('fit', SESSION, { signal: stop.signal });
    const question = asker.ask('question', QUESTION);
    stop.abort(new Error('changed a row'));
    await expect(fitted).rejects.toThrow('changed a row');
    expect(ports.map(({ isClosed }) => isClosed)).toEqual([true, false]);
    ports[1].work();
    expect(await question).toEqual(itemOf(QUESTION.item, QUESTION.seed));
    expect(ports[1].asked.map((one) => one.kind === 'do' && one.job)).toEqual(['question']);
  });

  test('that is cancelled stops in the middle, and the one behind it is done', async () => {
    const { asker, ports } = asking();
    const stop = new AbortController();
    const shares: number[] = [];
    const wanted = asker.ask('correct', challenge, {
      signal: stop.signal,
      onprogress: (share) => {
        shares.push(share);
        if (shares.length === 3) stop.abort(new Error('left the page'));
      }
    });
    const behind = asker.ask('question', { item: 'no-such-item', seed: 1 });
    ports[0].work();
    await expect(wanted).rejects.toThrow('left the page');
    await expect(behind).rejects.toThrow(/no-such-item/);
    await settled();
    expect(shares).toHaveLength(3);
    // Not only unheard: nothing more was done. One run may have been in the making.
    const done = ports[0].said.filter(({ ticket }) => ticket === 1);
    expect(done.length).toBeLessThanOrEqual(4);
    expect(done.every(({ kind }) => kind === 'progress')).toBe(true);
  });

  test('that is cancelled while it waits is never begun', async () => {
    const { asker, ports } = asking();
    const stop = new AbortController();
    const onprogress = vi.fn();
    const waits = asker.ask('correct', challenge, { signal: stop.signal, onprogress });
    stop.abort();
    await expect(waits).rejects.toThrow(/abort/i);
    ports[0].work();
    await settled();
    expect(onprogress).not.toHaveBeenCalled();
  });

  test('is not asked at all by whoever has left already', async () => {
    const { asker, ports } = asking();
    await expect(asker.ask('correct', challenge, { signal: AbortSignal.abort() })).rejects.toThrow(
      /abort/i
    );
    expect(ports).toEqual([]);
  });
});

describe('a worker', () => {
  const progress = { kind: 'progress', ticket: 1, runs: 1 } as const;

  test('that dies is made anew, and what it had in hand is begun again', async () => {
    const { asker, ports } = asking();
    const question = asker.ask('question', QUESTION);
    ports[0].tell(progress);
    ports[0].end();
    expect(ports).toHaveLength(2);
    ports[1].work();
    expect(await question).toEqual(itemOf(QUESTION.item, QUESTION.seed));
  });

  test('that dies of the same work twice is not made to do it a third time', async () => {
    const { asker, ports } = asking();
    const question = asker.ask('question', QUESTION);
    const lost = expect(question).rejects.toThrow(BrokeOff);
    for (const i of [0, 1]) {
      ports[i].tell(progress);
      ports[i].end();
    }
    await lost;
    expect(ports).toHaveLength(2);
  });

  test('that ends before it ever did anything gives way to the next kind', async () => {
    const { asker, ports, opened } = asking({ kinds: 2 });
    const question = asker.ask('question', QUESTION);
    ports[0].end();
    expect(opened).toEqual([0, 1]);
    ports[1].work();
    await question;
    void asker.ask('question', QUESTION);
    expect(opened).toEqual([0, 1]);
  });

  test('that cannot fetch the code of the work gives way to the next kind', async () => {
    const { asker, ports } = asking({ kinds: 2 });
    const question = asker.ask('question', QUESTION);
    ports[0].tell(progress);
    ports[0].tell({ kind: 'unable', ticket: 1, message: 'Failed to fetch' });
    expect(ports[0].isClosed).toBe(true);
    ports[1].work();
    expect(await question).toMatchObject({ source: QUESTION.item });
  });

  test('of the last kind that cannot fetch the code says so', async () => {
    const { asker, ports } = asking();
    const question = asker.ask('question', QUESTION);
    ports[0].tell({ kind: 'unable', ticket: 1, message: 'Failed to fetch' });
    await expect(question).rejects.toThrow('Failed to fetch');
  });

  test('that cannot be had gives way to the next kind', async () => {
    const port = new FakePort();
    const none = () => {
      throw new ReferenceError('Worker is not defined');
    };
    const asker = new Asker([none, () => port], 1);
    const question = asker.ask('question', QUESTION);
    port.work();
    expect(await question).toMatchObject({ source: QUESTION.item });
  });
});
