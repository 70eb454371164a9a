import { EventEmitter } from 'node:events';
import { describe, expect, test } from 'vitest';
import { itemOf, SOURCES } from '../../src/lib/course/items';
import { findLesson, loadLessons } from '../../src/lib/course';
import type { RodInput } from '../../src/lib/model';
import { contactWhileMoving, DataError, describeTry, gradeTry } from '../../src/lib/scoring';
import { Beside, type Thread } from '../../src/lib/server/beside';
import { answerTo, madeIn, type GivenFor, type Question } from '../../src/lib/server/beside-work';
import { jigFor } from '../../src/lib/server/plan-gear';
import type { Conditions } from '../../src/lib/wire';

const fixed = SOURCES.find(({ isGenerated, kind }) => !isGenerated && kind === 'choose');
if (!fixed) throw new Error('no fixed question');
const question: GivenFor<'judge'> = {
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

/** Takes questions, and answers when it is told to. */
class FakeThread extends EventEmitter {
  asked: { ticket: number; question: Question }[] = [];
  postMessage(asked: { ticket: number; question: Question }): void {
    this.asked.push(structuredClone(asked));
  }
  answerAll(): void {
    for (const { ticket, question } of this.asked.splice(0)) {
      this.emit('message', structuredClone({ ticket, answer: answerTo(question) }));
    }
  }
  unref(): void {}
  terminate = () => Promise.resolve(0);
}

function thread() {
  const threads: FakeThread[] = [];
  const beside = new Beside(() => {
    const thread = new FakeThread();
    threads.push(thread);
    return thread as unknown as Thread;
  });
  return { beside, threads };
}

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const still: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: 0,
  azimuth_deg: Array.from({ length: 300 }, (_, i) => 60 + i / 30)
};

describe('work in a thread', () => {
  test('grades a try as the one grader does, and names what is no rod input', async () => {
    const { beside, threads } = thread();
    const graded = beside.ask('grade', { challenge, input: still });
    const none = beside.ask('grade', { challenge, input: { ...still, azimuth_deg: [60] } });
    threads[0].answerAll();
    const { result, grade } = gradeTry(challenge, still);
    const { marks, passed } = grade;
    const { travel_m } = result;
    const contact = contactWhileMoving(result);
    const { did, why } = describeTry(challenge, result, grade, 'metric');
    expect(await graded).toMatchObject({ marks, passed, travel_m, contact });
    expect((await graded).says.metric).toBe(`${did} ${why}`);
    await expect(none).rejects.toThrow(/^move\.azimuth_deg: .*2.*, got \[60\]/);
  });

  test('takes the tries of a full room at once, and fewer the longer they are', async () => {
    const { beside, threads } = thread();
    const ofLength = (length: number) => {
      const input = { ...still, azimuth_deg: Array(length).fill(60) };
      return beside.ask('grade', { challenge, input });
    };
    const room = Array.from({ length: 500 }, () => ofLength(1000).catch(() => 'given up'));
    const long = Array.from({ length: 8 }, () => ofLength(12_000).catch(() => 'given up'));
    await expect(ofLength(12_000)).rejects.toMatchObject({ status: 503 });
    threads[0].emit('exit', 1);
    expect(await Promise.all([...room, ...long])).toEqual(Array(508).fill('given up'));
  });

  test('says the same as at once, faults by their place and value too', async () => {
    const { beside, threads } = thread();
    const verdict = beside.ask('judge', question);
    const key = itemOf(fixed.item, 0).answer.key as string;
    const right = beside.ask('judge', { ...question, given: { ...question.given, given: key } });
    const fault = beside.ask('judge', ofNothing);
    const jig = beside.ask('jig', shallow);
    threads[0].answerAll();
    expect(await right).toEqual({ objective: fixed.objective, right: true });
    await expect(verdict).rejects.toEqual(
      new DataError('given', 'none of them', 'can be no answer to this question')
    );
    await expect(fault).rejects.toThrow(/^item: is no question of this homework/);
    expect(() => madeIn(answerTo({ kind: 'judge', given: ofNothing }))).toThrow(DataError);
    expect(await jig).toEqual(jigFor(shallow));
    expect(threads).toHaveLength(1);
  });

  test('refuses what would wait too long, and takes more once some is judged', async () => {
    const { beside, threads } = thread();
    const waiting = Array.from({ length: 120 }, () =>
      beside.ask('judge', question).catch(() => 'judged')
    );
    await expect(beside.ask('judge', question)).rejects.toMatchObject({ status: 503 });
    threads[0].answerAll();
    expect(await Promise.all(waiting)).toEqual(Array(120).fill('judged'));
    const later = beside.ask('judge', ofNothing);
    threads[0].answerAll();
    await expect(later).rejects.toThrow(DataError);
  });

  test('what no thread could be started for is not in hand', async () => {
    let isBroken = true;
    const fake = new FakeThread();
    const beside = new Beside(() => {
      if (isBroken) throw new Error('no thread to be had');
      return fake as unknown as Thread;
    });
    for (let i = 0; i < 120; i++) {
      await expect(beside.ask('judge', question)).rejects.toThrow('no thread to be had');
    }
    isBroken = false;
    const later = beside.ask('judge', ofNothing);
    fake.answerAll();
    await expect(later).rejects.toThrow(DataError);
  });

  test('a thread that ends fails what waits, and the next answer starts another', async () => {
    const { beside, threads } = thread();
    const lost = beside.ask('judge', question);
    threads[0].emit('exit', 1);
    await expect(lost).rejects.toMatchObject({ status: 503 });
    const next = beside.ask('judge', ofNothing);
    threads[1].answerAll();
    await expect(next).rejects.toThrow(DataError);
  });
});
