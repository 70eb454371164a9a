import { linkFragment, readLinkFragment } from '$lib/connection';
import type { Scenario, ScenarioInput } from '$lib/model';
import { sentRun } from '$lib/wire';

const RUN_LINK = { mark: 'r1.', name: 'run', schema: sentRun } as const;

/** A run for practice water, as the fragment of a link. */
export function runFragment(run: ScenarioInput): Promise<string> {
  const { numerics, ...sent } = run;
  void numerics;
  return linkFragment(RUN_LINK, sent);
}

/** Throws DataError naming field and value. */
export const readRunFragment = (fragment: string): Promise<Scenario> =>
  readLinkFragment(RUN_LINK, fragment);

export const isRunFragment = (fragment: string): boolean =>
  fragment.replace(/^#/, '').startsWith(RUN_LINK.mark);
