import { expect, test } from 'vitest';
import { dealt } from '../../src/lib/course/items/draw';
import { generate, type Generator } from '../../src/lib/course/items/generator';

const KEYS = ['gravel', 'chunk rock', 'boulders'] as const;

/** Of scenes over rock one in eight makes a fair question, of the others each. */
const uneven: Generator = {
  id: 'uneven',
  kind: 'choose',
  objective: 'bottoms',
  make: (random, share) => {
    const key = dealt(share, KEYS);
    if (key === 'chunk rock' && random() > 1 / 8) return null;
    return {
      ask: key,
      explain: '',
      answer: { form: 'choose', options: KEYS.map((id) => ({ id, says: id, reply: '' })), key },
      evidence: { is: 'practice', source: '' },
      cases: []
    };
  }
};

test.each([20, 150, 1000])(
  'a key whose scenes are seldom fair is as often right in %i seeds',
  (many) => {
    const asked = Array.from({ length: many }, (_, i) => generate(uneven, i + 1).ask);
    for (const key of KEYS) {
      const times = asked.filter((one) => one === key).length;
      // Multiples of the golden ratio stay within two of even shares for so few.
      expect(Math.abs(times - many / KEYS.length), key).toBeLessThan(2);
    }
  }
);

test('and its place among the options tells nothing of it', () => {
  const places = KEYS.map(() => [0, 0, 0]);
  for (let seed = 1; seed <= 900; seed++) {
    const { answer } = generate(uneven, seed);
    if (answer.form !== 'choose') continue;
    const place = answer.options.findIndex(({ id }) => id === answer.key);
    places[KEYS.findIndex((key) => key === answer.key)][place]++;
  }
  // A hundred each, give or take a tenth: far from a key that has a place of its own.
  for (const counts of places.flat()) expect(Math.abs(counts - 100)).toBeLessThanOrEqual(10);
});
