import type { Units } from '$lib/scoring';
import type { Outfit } from '$lib/wire';
import type { HomeworkDraft } from './draft';

/** What is doubtful in a draft, in sentences. Fetched once it is asked: few drafts need it. */
export async function draftDoubts(
  draft: HomeworkDraft,
  outfits: readonly Outfit[],
  units: Units
): Promise<string[]> {
  const { doubtsOf, doubtTexts, gearName } = await import('./doubts');
  return doubtTexts(await doubtsOf(draft, (setup) => gearName(setup, outfits, units)));
}
