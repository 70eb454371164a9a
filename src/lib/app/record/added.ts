import type { LearnerRecord } from '$lib/wire';

/** What a record is made of, and what a learner calls it: one, and several. */
const PARTS = [
  ['tries', 'try', 'tries'],
  ['answers', 'answer', 'answers'],
  ['predictions', 'prediction', 'predictions'],
  ['outfits', 'outfit', 'outfits'],
  ['sessions', 'test session', 'test sessions'],
  ['plans', 'plan', 'plans'],
  ['entries', 'logged spell', 'logged spells'],
  ['club', 'club session', 'club sessions']
] as const;
type Counted = Pick<LearnerRecord, (typeof PARTS)[number][0]>;

/** "Added: 3 tries, 1 plan.": all that a file brought, not tries alone. */
export function addedText(before: Counted, after: Counted): string {
  const added = PARTS.flatMap(([part, one, several]) => {
    const count = after[part].length - before[part].length;
    return count > 0 ? [`${count} ${count === 1 ? one : several}`] : [];
  });
  return added.length > 0
    ? `Added: ${added.join(', ')}.`
    : 'Nothing new in this file: all of it is here already.';
}
