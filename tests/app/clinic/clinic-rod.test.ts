import { describe, expect, test } from 'vitest';
import { RodFollower } from '../../../src/lib/app/clinic/rod-follower';
import { RodSender } from '../../../src/lib/app/clinic/rod/rod-sender';
import type { RodBatch } from '../../../src/lib/wire';

const place = { title: 'One foot', plane: 'sweep' as const, start_deg: 60 };

describe('the phone', () => {
  function phone(answers: (batch: RodBatch) => Promise<typeof place>) {
    const sent: RodBatch[] = [];
    const faults: unknown[] = [];
    const send = (batch: RodBatch) => {
      sent.push(batch);
      return answers(batch);
    };
    const sender = new RodSender(
      'h',
      send,
      () => {},
      (error) => faults.push(error)
    );
    return { sender, sent, faults };
  }

  test('asks for the water first, then sends only while the rod is moved', async () => {
    const { sender, sent } = phone(async () => place);
    for (let i = 0; i < 3; i++) await sender.tick();
    expect(sent).toEqual([{ hold: 'h', seq: 0, again: 0, samples: [] }]);
    sender.turn(100, 1);
    sender.turn(105, 2);
    sender.turn(120, 3);
    await sender.tick();
    expect(sent[1]).toMatchObject({
      seq: 1,
      samples: [
        [100, 2],
        [120, 3]
      ]
    });
  });

  test('has one batch under way, and leaves out what a slow network makes old', async () => {
    let answer: (its: typeof place) => void = () => {};
    const { sender, sent } = phone(() => new Promise((done) => (answer = done)));
    const first = sender.tick();
    for (let i = 0; i < 60; i++) sender.turn(i * 20, i);
    await sender.tick();
    expect(sent).toHaveLength(1);
    answer(place);
    await first;
    void sender.tick();
    expect(sent[1].samples).toHaveLength(20);
    expect(sent[1].samples.at(-1)).toEqual([1180, 59]);
  });

  test('rests after a failure, and asks for another try however it went', async () => {
    let isUp = false;
    const { sender, sent, faults } = phone(async () => {
      if (!isUp) throw new TypeError('no network');
      return place;
    });
    for (let i = 0; i < 10; i++) await sender.tick();
    expect(faults).toHaveLength(1);
    sender.tryAgain();
    isUp = true;
    for (let i = 0; i < 20; i++) await sender.tick();
    expect(sent.at(-1)).toMatchObject({ again: 1, samples: [] });
  });
});

describe('the screen', () => {
  const batch = (seq: number, t_ms: number[], more = {}) => {
    const samples = t_ms.map((t): [number, number] => [t, t / 10]);
    return { hold: 'one', seq, again: 0, samples, ...more };
  };

  test('plays samples as far apart as the phone had them, also when one batch comes late', () => {
    const follower = new RodFollower();
    const first = follower.take(batch(0, [1000, 1016, 1050]), 5060).moves;
    const late = follower.take(batch(1, [1066, 1100]), 5150).moves;
    const times = [...first, ...late].map(([t]) => t);
    expect(times[4] - times[0]).toBeCloseTo(100, 0);
    expect(times[0]).toBeGreaterThan(5060);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  test('drops what is out of order and what a second phone sends, until the first is silent', () => {
    const follower = new RodFollower();
    follower.take(batch(3, [100]), 1000);
    expect(follower.take(batch(2, [90]), 1010).moves).toEqual([]);
    expect(follower.take(batch(9, [1], { hold: 'two' }), 1020).moves).toEqual([]);
    expect(follower.take(batch(10, [1], { hold: 'two' }), 4500).moves).toHaveLength(1);
  });

  test('begins another try once for each time it was asked', () => {
    const follower = new RodFollower();
    expect(follower.take(batch(0, [], { again: 4 }), 0).isAgain).toBe(false);
    expect(follower.take(batch(1, [], { again: 5 }), 50).isAgain).toBe(true);
    expect(follower.take(batch(2, [], { again: 5 }), 100).isAgain).toBe(false);
  });
});
