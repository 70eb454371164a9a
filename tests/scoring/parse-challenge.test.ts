import { describe, expect, test } from 'vitest';
import { DataError, parseChallenge } from '../../src/lib/scoring';
import { oneFootGoals, plainChallenge } from './results';

function faultOf(input: unknown): DataError {
  try {
    parseChallenge(input);
  } catch (error) {
    if (error instanceof DataError) return error;
    throw error;
  }
  throw new Error('was not refused');
}

const [travel, contact, speed] = oneFootGoals;
const { water, ...noWater } = plainChallenge.setup;

describe('a challenge', () => {
  test('that is sound comes back as it was given, and survives JSON', () => {
    expect(parseChallenge(JSON.parse(JSON.stringify(plainChallenge)))).toEqual(plainChallenge);
  });

  const cases: [string, object, string, unknown][] = [
    ['a key nobody knows', { colour: 'red' }, 'colour', 'red'],
    ['an id with spaces', { id: 'One Foot' }, 'id', 'One Foot'],
    ['no words', { ask: ' ' }, 'ask', ' '],
    ['words with a quantity nobody knows', { ask: 'Go {miles:3}.' }, 'ask', 'Go {miles:3}.'],
    ['a setup without water', { setup: noWater }, 'setup.water', undefined],
    [
      'water too deep',
      { setup: { ...noWater, water: { depth_m: 99 } } },
      'setup.water.depth_m',
      99
    ],
    ['a plane that is none', { plane: 'roll' }, 'plane', 'roll'],
    ['a move that is none', { reference: { kind: 'wiggle' } }, 'reference.kind', 'wiggle'],
    [
      'a move with a wrong angle',
      { beginner: { kind: 'sweep', from_deg: 55, to_deg: 'far', duration_s: 1 } },
      'beginner.to_deg',
      'far'
    ],
    ['no goals', { goals: [] }, 'goals', []],
    ['weights that do not sum to 100', { goals: [travel, contact] }, 'goals', 80],
    ['a weight in parts', { goals: [{ ...travel, weight: 0.5 }] }, 'goals.0.weight', 0.5],
    [
      'a goal with a key of another',
      { goals: [contact, { ...speed, least: 1 }, travel] },
      'goals.1.least',
      1
    ],
    [
      'a stone that is not there',
      { goals: [{ kind: 'stones', touched: [0], weight: 100 }] },
      'goals.0.touched',
      0
    ]
  ];
  test.each(cases)('with %s is refused by path and value', (_, change, path, value) => {
    const fault = faultOf({ ...plainChallenge, ...change });
    expect({ path: fault.path, value: fault.value }).toEqual({ path, value });
    expect(fault.message).toContain(path);
  });

  test('whose move begins elsewhere than its start is refused, with the distance', () => {
    const reference = { ...plainChallenge.reference, from_deg: 45 };
    const fault = faultOf({ ...plainChallenge, reference });
    expect(fault.path).toBe('reference');
    expect(fault.message).toMatch(/0\.323 m away/);
  });

  test('with a band as wide as its target is refused', () => {
    const wide = { kind: 'travel', target_m: 0.3, band_m: 0.3, weight: 100 };
    expect(faultOf({ ...plainChallenge, goals: [wide] }).message).toContain(
      'smaller than target_m'
    );
  });

  test('says what depth was wrong and what was expected', () => {
    expect(water.depth_m).toBe(3.1);
    const fault = faultOf({ ...plainChallenge, setup: { ...noWater, water: { depth_m: -2 } } });
    expect(fault.message).toBe('setup.water.depth_m: must be a number from 0.1 to 80, got -2');
  });
});
