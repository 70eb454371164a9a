import type { TryRun } from '$lib/app/try';

/**
 * What came of the first try stands on its page as a step of the browser's history does: who follows a
 * link from it and comes back finds it again. Its mark lies beside the router's own.
 */
const MARK = 'feltfoot-result';

let made: TryRun | null = null;

/** What came of the try at this step; null where none was made, or the page was loaded anew since. */
export function resultHere(): TryRun | null {
  const step = history.state as Record<string, unknown> | null;
  return step?.[MARK] === true ? made : null;
}

/** From now on it stands here; null where the rod is taken again. */
export function keepHere(result: TryRun | null): void {
  made = result;
  history.replaceState({ ...(history.state as object | null), [MARK]: result !== null }, '');
}
