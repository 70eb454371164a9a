import { fit, parseSession } from '../src/lib/fit';
import type { UnknownName } from '../src/lib/scoring';
import { madeUp, MOVES, trueOutcome } from '../tests/fit/sessions';
import type { Metrics } from './metric';

const SESSIONS = 200;
/** Predicted and not measured: in the middle of what the others span. */
const HELD_OUT = { kind: 'lift', from_deg: 10, to_deg: 50, duration_s: 0.8 } as const;

/** How often a 90 % interval of the fit holds the truth it was made with, and how long a fit takes. */
export function fitMetrics(sessions = SESSIONS): Metrics {
  const held = new Map<string, number>();
  let predicted = 0;
  const from = performance.now();
  for (let seed = 1; seed <= sessions; seed++) {
    const { session, truth } = madeUp(seed);
    const tests = [...session.tests, { move: { ...HELD_OUT } }];
    const result = fit(parseSession({ ...session, tests }));
    for (const name of Object.keys(truth) as UnknownName[]) {
      const [low, high] = result.unknowns[name]?.interval90 ?? [NaN, NaN];
      const isHeld = truth[name] >= low && truth[name] <= high;
      held.set(name, (held.get(name) ?? 0) + (isHeld ? 1 : 0));
    }
    const { travel_m } = trueOutcome(truth, { ...HELD_OUT });
    const [low, high] = result.tests[MOVES.length].predicted?.travel_interval90 ?? [NaN, NaN];
    if (travel_m >= low && travel_m <= high) predicted++;
  }
  const seconds = (performance.now() - from) / 1000 / sessions;
  const percent = (count: number) => (100 * count) / sessions;
  const least = Math.min(...held.values());
  const unit = `% of ${sessions} sessions`;
  return {
    'fit: least coverage of 90 %': { value: percent(least), unit, target: { atLeast: 85 } },
    'fit: most coverage of 90 %': {
      value: percent(Math.max(...held.values())),
      unit,
      target: { atMost: 95 }
    },
    'fit: held-out move in its band': { value: percent(predicted), unit, target: { atLeast: 85 } },
    'fit: one session, one thread': { value: seconds, unit: 's', target: { atMost: 5 } }
  };
}
