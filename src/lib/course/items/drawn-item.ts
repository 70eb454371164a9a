import { simulateScenario } from '../../model';
import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import { shownScenarioOf } from './measure';
import { PULL_FEATURES, type PullFeature } from './pull-features';
import { recognised, type Recognised } from './recognised';

/** Null unless the chart of this very run shows what is said of the key, and of it alone. */
export function recogniseDrawn(wanted: Recognised<{ drawn: PullFeature }>): ItemDraft | null {
  const drawn = Object.fromEntries(wanted.options.map((one) => [one.id, one.drawn]));
  if (!isDrawnAlone(wanted.run, drawn, wanted.key)) return null;
  return recognised(wanted, { is: 'drawn', drawn });
}

/** Whether the chart of this run shows the key's feature alone: it is drawn as it is, whatever is unknown. */
export function isDrawnAlone(
  run: ShownRun,
  drawn: Readonly<Record<string, PullFeature>>,
  key: string
): boolean {
  const { trace } = simulateScenario(shownScenarioOf(run));
  return Object.entries(drawn).every(
    ([id, feature]) => PULL_FEATURES[feature](trace) === (id === key)
  );
}
