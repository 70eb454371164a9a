import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import type { ItemOption } from './item';

/** Which of these was it? A run that is shown, and what each option claims of it. */
export interface Recognised<Claimed> {
  ask: string;
  caption: string;
  run: ShownRun;
  shows: NonNullable<ItemDraft['shows']>;
  options: readonly (ItemOption & Claimed)[];
  key: string;
  explain: string;
}

/** The question about it, with what makes its key right. */
export function recognised(
  { ask, caption, run, shows, options, key, explain }: Recognised<unknown>,
  evidence: ItemDraft['evidence']
): ItemDraft {
  const written = options.map(({ id, says, reply }) => ({ id, says, reply }));
  const answer = { form: 'choose', options: written, key } as const;
  return { ask, explain, shows, answer, evidence, cases: [{ caption, run }] };
}
