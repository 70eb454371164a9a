import type { TryRun } from '$lib/app/try';

/**
 * What came of the first try stands on its page as a step of the browser's history does: who follows a
 * link from it and comes back finds it again, and so does who loads it again. Its mark lies beside the
 * router's own: the try as a link holds it.
 */
const MARK = 'feltfoot-result';

let kept: { link: string; run: TryRun } | null = null;

/** The try whose result stands at this step, as a link holds it; null where none was made. */
export function linkHere(): string | null {
  const link = (history.state as Record<string, unknown> | null)?.[MARK];
  return typeof link === 'string' ? link : null;
}

/** What came of it; null where the page was loaded anew since, and it is to be run again. */
export const runHere = (): TryRun | null => (kept && kept.link === linkHere() ? kept.run : null);

/** From now on it stands here; null where the rod is taken again. */
export function keepHere(result: { link: string; run: TryRun } | null): void {
  kept = result;
  history.replaceState({ ...(history.state as object | null), [MARK]: result?.link }, '');
}
