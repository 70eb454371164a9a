import { fit, parseSession, type FitResult } from '../src/lib/fit';
import type { SetupInput } from '../src/lib/model';
import type { UnknownName } from '../src/lib/scoring';
import {
  madeUp,
  MOVES,
  NOMINAL,
  trueOutcome,
  type Circumstances,
  type Truth
} from '../tests/fit/sessions';
import { variedSession } from '../tests/fit/varied-sessions';
import { cpuSeconds, percentile, type Metrics } from './metric';

const SESSIONS = 200;
/** Of every other kind; what 85 % of all would show in 60 with one deviation of 60 draws (5 %) less. */
const OTHERS = 60;
const LEAST_OF_OTHERS = 80;
/** Predicted and not measured: in the middle of what the others span. */
const HELD_OUT = { kind: 'lift', from_deg: 10, to_deg: 50, duration_s: 0.8 } as const;

const ofKind = (kind: string) => MOVES.filter((move) => move.kind === kind);
const centimetre = () => 0.01;

/** Sessions as they come: measured better or worse than usual, little, one-sided, or not what they say. */
const KINDS: Readonly<Record<string, Circumstances>> = {
  'filmed to a centimetre': { sd_m: centimetre, said_m: centimetre },
  'four tests': { moves: MOVES.slice(0, 4) },
  'sweeps alone': { moves: ofKind('sweep') },
  'lifts alone': { moves: ofKind('lift') },
  'without heights': { hasHeights: false },
  'slack pulled out': { isSlackKnown: true },
  'a ± three times too small': { said_m: (m) => Math.max(0.05 * Math.abs(m), 0.007) },
  'water a fifth shallower': { really: { ...NOMINAL, water: { depth_m: 2.4 } } }
};

/** What a session was made of, however it was made. */
interface Made {
  readonly session: { readonly tests: object[] };
  readonly truth: Truth;
  /** What the moves were truly made with. */
  readonly really: SetupInput;
}

interface Coverage {
  /** Percent of the sessions that leave an unknown open in which its interval holds the truth. */
  readonly of: Readonly<Partial<Record<UnknownName, number>>>;
  /** Percent in which a move that was not measured falls into its band. */
  readonly predicted: number;
  /** Processor time of a fit: usual, and of the slowest in a hundred. */
  readonly seconds: number;
  readonly longest_s: number;
}

function coverageOf(made: (seed: number) => Made, sessions: number): Coverage {
  const held: Partial<Record<UnknownName, number[]>> = {};
  const seconds: number[] = [];
  let predicted = 0;
  for (let seed = 1; seed <= sessions; seed++) {
    const { session, truth, really } = made(seed);
    const tests = [...session.tests, { move: { ...HELD_OUT } }];
    let result = null as unknown as FitResult;
    seconds.push(cpuSeconds(() => (result = fit(parseSession({ ...session, tests })))));
    for (const name of Object.keys(result.unknowns) as UnknownName[]) {
      const [low, high] = result.unknowns[name]?.interval90 ?? [NaN, NaN];
      (held[name] ??= []).push(truth[name] >= low && truth[name] <= high ? 100 : 0);
    }
    const { travel_m } = trueOutcome(truth, { ...HELD_OUT }, really);
    const [low, high] = result.tests[tests.length - 1].predicted?.travel_interval90 ?? [NaN, NaN];
    if (travel_m >= low && travel_m <= high) predicted++;
  }
  const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
  return {
    of: Object.fromEntries(Object.entries(held).map(([name, all]) => [name, mean(all)])),
    predicted: (100 * predicted) / sessions,
    seconds: mean(seconds),
    longest_s: percentile(seconds, 0.99)
  };
}

const asUsual =
  (how: Circumstances) =>
  (seed: number): Made => ({ ...madeUp(seed, how), really: how.really ?? how.gear ?? NOMINAL });

const varied = (seed: number): Made => {
  const { gear, ...made } = variedSession(seed);
  return { ...made, really: gear };
};

const ends = ({ of }: Coverage) => {
  const all = Object.values(of);
  return { least: Math.min(...all), most: Math.max(...all) };
};

/** How often a 90 % interval of the fit holds the truth it was made with, and how long a fit takes. */
export const fitMetrics = (sessions = SESSIONS) => metricsOf('fit', asUsual({}), sessions);

/** The same of sessions as nobody planned them. */
export const fitVariedMetrics = (sessions = SESSIONS) => metricsOf('fit, varied', varied, sessions);

function metricsOf(part: string, made: (seed: number) => Made, sessions: number): Metrics {
  const coverage = coverageOf(made, sessions);
  const unit = `% of ${sessions} sessions`;
  const ofEach = Object.entries(coverage.of).map(([name, value]) => [
    `${part}: ${name} in its 90 %`,
    { value, unit, target: { atLeast: 85 } }
  ]);
  return {
    ...Object.fromEntries(ofEach),
    [`${part}: most of them`]: { value: ends(coverage).most, unit, target: { atMost: 95 } },
    [`${part}: held-out move in its band`]: {
      ...{ value: coverage.predicted, unit, target: { atLeast: 85 } }
    },
    [`${part}: one fit`]: { value: coverage.seconds, unit: 'CPU s', target: { atMost: 5 } },
    [`${part}: longest of a hundred`]: {
      ...{ value: coverage.longest_s, unit: 'CPU s', target: { atMost: 5 } }
    }
  };
}

/** The same of sessions that are not as usual. No targets where the session says what is not so. */
export function fitKindMetrics(sessions = OTHERS): Metrics {
  const unit = `% of ${sessions} sessions`;
  const rows = Object.entries(KINDS).flatMap(([kind, how]) => {
    const coverage = coverageOf(asUsual(how), sessions);
    const isTrue =
      how.really === undefined && (how.said_m === undefined || how.said_m === how.sd_m);
    const target = isTrue ? { atLeast: LEAST_OF_OTHERS } : null;
    return [
      [`fit, ${kind}: least`, { value: ends(coverage).least, unit, target }],
      [`fit, ${kind}: predicted`, { value: coverage.predicted, unit, target }],
      [`fit, ${kind}: time`, { value: coverage.seconds, unit: 'CPU s', target: { atMost: 5 } }]
    ] as const;
  });
  return Object.fromEntries(rows);
}
