import { describe, expect, test } from 'vitest';
import { itemOf, type OrderAnswer } from '../../src/lib/course/items';
import { sampled } from '../samples';

const SEEDS = sampled(
  Array.from({ length: 24 }, (_, i) => i + 1),
  8
);

/** How often each kind of row is right, most first. */
function kindsOf(source: string, kindOf: (key: readonly string[]) => string): number[] {
  const kinds = SEEDS.map((seed) => kindOf((itemOf(source, seed).answer as OrderAnswer).key));
  const times = [...new Set(kinds)].map((kind) => kinds.filter((one) => one === kind).length);
  return times.sort((a, b) => b - a);
}

function hoursOf(id: string): number {
  const [, from = '', to = ''] = /^h(\d+)-(\d+)$/.exec(id) ?? [];
  return Number(to) - Number(from);
}

const feetOf = (id: string) => Number(/-f(\d+)$/.exec(id)?.[1]);

describe('no one order is right in most questions', () => {
  test('of lines: two near and one far out are as often asked for as one near and two far out', () => {
    const [most] = kindsOf('order-lines-hop', (key) => {
      const nearest = Math.min(...key.map(feetOf));
      return key.map((id) => (feetOf(id) === nearest ? 'near' : 'far')).join();
    });
    expect(most).toBeLessThanOrEqual(SEEDS.length / 2);
  });

  test('of moves: no shape of row is, a long lift, then a sweep, then an hour', () => {
    const [most] = kindsOf('order-moves-travel', (key) =>
      key.map((id) => (id.startsWith('sweep') ? 'sweep' : hoursOf(id) > 1 ? 'long' : 'hour')).join()
    );
    expect(most).toBeLessThanOrEqual(SEEDS.length / 2);
  });
});
