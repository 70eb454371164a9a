import { expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';
import { inUnits } from '../../src/lib/scoring';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 60 }, (_, i) => i + 1);
const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');

/** "3½ ft", "9 in", in feet. */
function feetIn(text: string): number {
  const [, whole, half, unit] = /(\d*)(½?) (ft|in)\b/.exec(text) ?? [];
  return (Number(whole || 0) + (half ? 0.5 : 0)) / (unit === 'in' ? 12 : 1);
}

test.each(sampled(SEEDS, 12))(
  'who counts hops as it is explained marks the right one, seed %i',
  (seed) => {
    const { ask, answer } = itemOf('hops-and-reel', seed);
    const { options, key } = answer as ChooseAnswer;
    const words = read(ask);
    const [, first = ''] = /In the model the first hop brought it (.*?)\./.exec(words) ?? [];
    const hops = words.includes('hop it twice') ? 2 : 3;
    const counted = feetIn(first) * (words.includes('reel up the slack') ? hops : 1);
    const off = (says: string) => Math.abs(feetIn(read(says)) / counted - 1);
    const nearest = [...options].sort((a, b) => off(a.says) - off(b.says))[0];
    expect(nearest.id, `${words} ${read(nearest.says)}`).toBe(key);
  }
);
