import { simulateScenario } from '../../model';
import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import type { ItemOption } from './item';
import { shownScenarioOf } from './measure';
import { PULL_FEATURES, type PullFeature } from './pull-features';

interface Wanted {
  ask: string;
  caption: string;
  run: ShownRun;
  shows: NonNullable<ItemDraft['shows']>;
  options: readonly (ItemOption & { drawn: PullFeature })[];
  key: string;
  explain: string;
}

/** Which of these was it? Null unless the chart of this very run shows what is said of the key, and of it alone. */
export function recogniseDrawn(wanted: Wanted): ItemDraft | null {
  const { ask, caption, run, shows, options, key, explain } = wanted;
  const drawn = Object.fromEntries(options.map((one) => [one.id, one.drawn]));
  if (!isDrawnAlone(run, drawn, key)) return null;
  return {
    ask,
    explain,
    shows,
    answer: {
      form: 'choose',
      options: options.map(({ id, says, reply }) => ({ id, says, reply })),
      key
    },
    evidence: { is: 'drawn', drawn },
    cases: [{ caption, run }]
  };
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
