import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { fit, parseSession } from '../../src/lib/fit';
import type { UnknownName } from '../../src/lib/scoring';
import { ScenarioError } from '../../src/lib/model';
import { madeUp, MOVES, NOMINAL, trueOutcome } from './sessions';

const { session, truth } = madeUp(5);
const result = fit(parseSession(session));

describe('a fit of twelve invented tests', () => {
  const names = Object.keys(truth) as UnknownName[];
  test.each(names)('finds %s', (name) => {
    const { estimate, interval90 } = result.unknowns[name] ?? { estimate: NaN, interval90: [0, 0] };
    expect(interval90[0]).toBeLessThanOrEqual(estimate);
    expect(interval90[1]).toBeGreaterThanOrEqual(estimate);
    // Nine in ten hold the truth; this seed is one where all five do. Coverage is in the bench.
    expect(truth[name]).toBeGreaterThanOrEqual(interval90[0]);
    expect(truth[name]).toBeLessThanOrEqual(interval90[1]);
  });

  test('says what the tests tell, and what to do next', () => {
    expect(result.verdict).toMatch(/^Your tests pin down .*how far your rod reaches/);
    expect(result.next.length).toBeGreaterThan(0);
    for (const { shrinks } of result.next) {
      expect(shrinks).toBeGreaterThan(0);
      expect(shrinks).toBeLessThan(1);
    }
  });

  test('predicts each test beside what was measured, and the last from the others', () => {
    expect(result.tests).toHaveLength(MOVES.length);
    expect(result.held_out?.test).toBe(MOVES.length - 1);
    const inside = result.tests.filter(({ predicted, measured }) => {
      const [low, high] = predicted?.travel_interval90 ?? [0, 0];
      return (measured.travel_m ?? NaN) >= low && (measured.travel_m ?? NaN) <= high;
    });
    // Of twelve at nine in ten: fewer than nine happens once in 200 sessions (binomial).
    expect(inside.length).toBeGreaterThanOrEqual(9);
  });
});

test('a move that was not measured is predicted, with its band', () => {
  const asked = { move: { kind: 'lift', from_deg: 0, to_deg: 50, duration_s: 1 } } as const;
  const few = { ...session, tests: [...session.tests.slice(0, 6), asked] };
  const { predicted, measured } = fit(parseSession(few)).tests[6];
  const { travel_m } = trueOutcome(truth, { ...asked.move });
  expect(measured).toEqual({});
  expect(travel_m).toBeGreaterThan(predicted?.travel_interval90[0] ?? Infinity);
  expect(travel_m).toBeLessThan(predicted?.travel_interval90[1] ?? -Infinity);
});

test('what is known is not fitted, and a test’s own slack stands', () => {
  const few = session.tests.slice(0, 4).map((one) => ({ ...one, start: { slack_m: 0.1 } }));
  const { unknowns } = fit(parseSession({ gear: NOMINAL, tests: few, known: { reach_m: 2 } }));
  expect(Object.keys(unknowns).sort()).toEqual(['drag_area_m2', 'elevation_deg', 'lift_to_drag']);
});

test('one test tells little, and the fit says so', () => {
  const { unknowns, verdict } = fit(parseSession({ ...session, tests: session.tests.slice(4, 5) }));
  expect(unknowns.lift_to_drag?.told).toBe(false);
  expect(verdict).toMatch(/ don’t pin down .*Next: /);
});

describe('what the tests say of themselves', () => {
  const two = session.tests.slice(0, 2);

  test('how long each was waited out is kept', () => {
    const tests = two.slice(0, 1);
    const { unknowns } = fit(parseSession({ gear: { ...NOMINAL, hold_s: 1 }, tests }));
    const longer = fit(parseSession({ gear: NOMINAL, tests })).unknowns;
    expect(unknowns.reach_m?.estimate).not.toBe(longer.reach_m?.estimate);
  });

  test('that they contradict each other widens every range, and is said', () => {
    // One move, measured three times to a centimetre: half a metre apart.
    const tests = [0.6, 1.1, 1.6].map((travel_m) => ({
      move: MOVES[0],
      travel_m,
      travel_sd_m: 0.01
    }));
    const { unknowns, verdict } = fit(parseSession({ gear: NOMINAL, tests }));
    expect(verdict).toContain('scatter more than their ± allows');
    // The least and the most are off alike: neither may be named without the other.
    expect(verdict).toMatch(/No set-up explains tests 1(, 2)? and 3: measure them again/);
    const [least, most] = unknowns.reach_m?.interval90 ?? [0, 0];
    // Said to a centimetre, one such travel would tell the reach to some hundredths.
    expect(most - least).toBeGreaterThan(0.2);
  });

  test('a line twice as fine as the fit’s own changes nothing that it finds', () => {
    // Made with the model’s 40 segments; measured better than the coarse line is exact.
    const exact = MOVES.slice(0, 3).map((move) => {
      const { travel_m, peak_height_m } = trueOutcome(truth, move);
      return { move, travel_m, travel_sd_m: 0.004, peak_height_m, height_sd_m: 0.004 };
    });
    const result = fit(parseSession({ gear: NOMINAL, tests: exact }));
    result.tests.forEach(({ predicted, measured }) => {
      // Three deviations: without the shift the coarse line is off by more.
      expect(Math.abs((predicted?.travel_m ?? NaN) - (measured.travel_m ?? NaN))).toBeLessThan(
        0.012
      );
    });
  });

  test('where every number is given There’s nothing left to fit', () => {
    const known = {
      reach_m: 2,
      elevation_deg: 0,
      slack_m: 0,
      drag_area_m2: 6e-4,
      lift_to_drag: 0.1
    };
    const { unknowns, verdict } = fit(parseSession({ gear: NOMINAL, tests: two, known }));
    expect(unknowns).toEqual({});
    expect(verdict).toContain('There’s nothing left to fit');
  });
});

test('progress is told, and a listener that throws stops the fit', () => {
  const heard: number[] = [];
  const few = parseSession({ ...session, tests: session.tests.slice(0, 2) });
  const told = fit(few, { tell: (share) => heard.push(share) });
  // The same again, told or not.
  expect(fit(few)).toEqual(told);
  expect(heard.length).toBeGreaterThan(5);
  expect(heard).toEqual([...heard].sort((a, b) => a - b));
  const stop = () => {
    throw new Error('stopped');
  };
  expect(() => fit(few, { tell: stop })).toThrow('stopped');
});

describe('a session with a fault is refused with its path and value', () => {
  const [first] = session.tests;
  test.each([
    ['an unknown key', { ...session, pond: 1 }, 'pond'],
    ['no tests', { ...session, tests: [] }, 'tests: must hold 1 to 200 tests, got []'],
    ['too many', { ...session, tests: Array(201).fill(first) }, 'must hold 1 to 200 tests, got [{'],
    [
      'a length in another unit',
      { ...session, tests: [{ move: first.move, travel_in: 12 }] },
      'tests.0.travel_in: unknown key, got 12'
    ],
    [
      'grams for kilograms',
      { ...session, gear: { ...NOMINAL, bait: { mass_kg: 14.2 } } },
      'gear.bait.mass_kg: must be a number from 0.0001 to 1, got 14.2'
    ],
    [
      'a test without its move',
      { ...session, tests: [{ travel_m: 1 }] },
      'tests.0.move: is missing'
    ],
    [
      'a slack that nobody has',
      { ...session, known: { slack_m: 50 } },
      'known.slack_m: must be from 0 to 10, got 50'
    ],
    ['no gear', { tests: [first] }, 'gear'],
    ['a move without an end', { ...session, tests: [{ move: { kind: 'lift' } }] }, 'tests.0.move'],
    [
      'a travel that is no number',
      { ...session, tests: [{ ...first, travel_m: 'far' }] },
      'tests.0.travel_m'
    ],
    [
      'a start that cannot be',
      { ...session, tests: [first, { ...first, start: { slack_m: -1 } }] },
      'tests.1.start.slack_m'
    ],
    [
      'a bait without drag, of which no factor can be found',
      { ...session, gear: { ...NOMINAL, bait: { mass_kg: 0.0142, drag_area_m2: 0 } } },
      'gear.bait.drag_area_m2'
    ],
    ['what is no object', 'twelve drags', 'session'],
    [
      'a line as thick as a rope',
      { ...session, gear: { ...NOMINAL, line: { diameter_m: 1 } } },
      'gear.line.diameter_m'
    ]
  ])('%s', (_what, faulty, path) => {
    expect(() => parseSession(faulty)).toThrow(ScenarioError);
    expect(() => parseSession(faulty)).toThrow(path);
  });
});

describe('npm run fit', () => {
  const run = (input: string) =>
    spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'scripts/fit.ts'], {
      input,
      encoding: 'utf8'
    });

  // What it prints is read where each command is tried in a clone (tests/commands).
  test.each([
    ['what is no JSON', '{', 'standard input is not JSON'],
    ['what is no session', '{"gear":{}}', 'tests: is missing']
  ])('refuses %s with exit 2 and one line', (_what, input, said) => {
    const { stderr, status } = run(input);
    expect(status).toBe(2);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain(said);
  });
});
