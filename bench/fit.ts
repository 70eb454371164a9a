import { fit, parseSession } from '../src/lib/fit';
import type { UnknownName } from '../src/lib/scoring';
import { madeUp, MOVES, NOMINAL, trueOutcome, type Circumstances } from '../tests/fit/sessions';
import type { Metrics } from './metric';

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

interface Coverage {
  /** Percent of the sessions in which an unknown's interval holds the truth. */
  readonly of: Readonly<Partial<Record<UnknownName, number>>>;
  /** Percent in which a move that was not measured falls into its band. */
  readonly predicted: number;
  readonly seconds: number;
}

function coverageOf(how: Circumstances, sessions: number): Coverage {
  const held: Partial<Record<UnknownName, number>> = {};
  let predicted = 0;
  const from = performance.now();
  for (let seed = 1; seed <= sessions; seed++) {
    const { session, truth } = madeUp(seed, how);
    const tests = [...session.tests, { move: { ...HELD_OUT } }];
    const result = fit(parseSession({ ...session, tests }));
    for (const name of Object.keys(result.unknowns) as UnknownName[]) {
      const [low, high] = result.unknowns[name]?.interval90 ?? [NaN, NaN];
      held[name] = (held[name] ?? 0) + (truth[name] >= low && truth[name] <= high ? 1 : 0);
    }
    const { travel_m } = trueOutcome(truth, { ...HELD_OUT }, how.really ?? how.gear);
    const [low, high] = result.tests[tests.length - 1].predicted?.travel_interval90 ?? [NaN, NaN];
    if (travel_m >= low && travel_m <= high) predicted++;
  }
  const percent = (count: number) => (100 * count) / sessions;
  return {
    of: Object.fromEntries(Object.entries(held).map(([name, count]) => [name, percent(count)])),
    predicted: percent(predicted),
    seconds: (performance.now() - from) / 1000 / sessions
  };
}

const ends = ({ of }: Coverage) => {
  const all = Object.values(of);
  return { least: Math.min(...all), most: Math.max(...all) };
};

/** How often a 90 % interval of the fit holds the truth it was made with, and how long a fit takes. */
export function fitMetrics(sessions = SESSIONS): Metrics {
  const usual = coverageOf({}, sessions);
  const { least, most } = ends(usual);
  const unit = `% of ${sessions} sessions`;
  return {
    'fit: least coverage of 90 %': { value: least, unit, target: { atLeast: 85 } },
    'fit: most coverage of 90 %': { value: most, unit, target: { atMost: 95 } },
    'fit: held-out move in its band': { value: usual.predicted, unit, target: { atLeast: 85 } },
    'fit: one session, one thread': { value: usual.seconds, unit: 's', target: { atMost: 5 } }
  };
}

/** The same of sessions that are not as usual. No targets where the session says what is not so. */
export function fitKindMetrics(sessions = OTHERS): Metrics {
  const unit = `% of ${sessions} sessions`;
  const rows = Object.entries(KINDS).flatMap(([kind, how]) => {
    const coverage = coverageOf(how, sessions);
    const isTrue =
      how.really === undefined && (how.said_m === undefined || how.said_m === how.sd_m);
    const target = isTrue ? { atLeast: LEAST_OF_OTHERS } : null;
    return [
      [`fit, ${kind}: least`, { value: ends(coverage).least, unit, target }],
      [`fit, ${kind}: predicted`, { value: coverage.predicted, unit, target }],
      [`fit, ${kind}: time`, { value: coverage.seconds, unit: 's', target: { atMost: 5 } }]
    ] as const;
  });
  return Object.fromEntries(rows);
}
