import { describe, expect, test } from 'vitest';
import { FIXED, generate, GENERATORS, type Item } from '../../src/lib/course/items';
import { joined, tellingFaults, toldIn } from '../../scripts/telling-words';

/** Questions with these options, the first one right. */
function asking(count: number, says: readonly string[]): Item[] {
  const options = says.map((one, i) => ({ id: `o${i}`, says: one, reply: '' }));
  return Array.from({ length: count }, () => ({
    ...{ source: 'a-test', seed: 1, kind: 'choose', objective: 'slack', ask: 'Why?', explain: '' },
    ...{ evidence: { is: 'practice', source: 'a test' }, cases: [] },
    answer: { form: 'choose', options, key: 'o0' }
  }));
}

describe('words that tell the answer', () => {
  test('are found out where they are never right', () => {
    const rows = ['1 oz in', '3/4 oz in'].map((heavy) =>
      asking(20, [`${heavy} 4 seconds`, `${heavy} half a second`, 'nothing: it is down'])
    );
    const faults = tellingFaults(toldIn(rows.flat()));
    expect(faults).toContain('all: half a second is right in 0 of 40 options');
    expect(faults).toContain('all: nothing … is right in 0 of 40 options');
    expect(faults).toContain('all: 4 seconds is right in 40 of 40 options');
  });

  test('and over several rows together, where each has too few', () => {
    const row = asking(8, ['reel down first', 'hold still', 'sweep hard']);
    expect(tellingFaults(toldIn(row))).toEqual([]);
    expect(tellingFaults(joined([toldIn(row), toldIn(row), toldIn(row)]))).toContain(
      'all: reel down … is right in 24 of 24 options'
    );
  });

  test('are none where they are right as often as not', () => {
    const turns = [
      ['1 ft', '2 ft', '3 ft'],
      ['2 ft', '3 ft', '1 ft'],
      ['3 ft', '1 ft', '2 ft']
    ];
    expect(tellingFaults(toldIn(turns.flatMap((says) => asking(40, says))))).toEqual([]);
  });
});

// Those that need no run of the model; `npm run check:items` has all of them, and all together.
test('no words tell the answers of written questions and of those on season and mood', () => {
  const made = GENERATORS.filter(({ id }) => /^(season|mood|move)/.test(id)).flatMap((one) =>
    Array.from({ length: 300 }, (_, i) => generate(one, i + 1))
  );
  expect(tellingFaults(joined([toldIn(FIXED), toldIn(made)]))).toEqual([]);
});

test('how a written option begins is right somewhere and wrong somewhere, where four begin so', () => {
  const begun = Object.entries(toldIn(FIXED)).filter(
    ([words, { options }]) => words.endsWith('…') && options >= 4
  );
  expect(begun.length).toBeGreaterThan(10);
  const telling = begun.filter(([, { options, right }]) => right === 0 || right === options);
  expect(telling).toEqual([]);
});
