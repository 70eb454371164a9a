import type { Judgement } from '$lib/course/items';

/** A reply that begins with a yes or no of its own, or says what is right about a wrong answer. */
const OPENS_ITSELF =
  /^(Yes|Right|No|Not|Maybe|Could be|Sometimes|Some|You can|You could|It may|It does|Up to)\b/;

/** The word before the reply; none where the reply opens itself. */
export function openingOf({ right, reply }: Judgement): string {
  if (OPENS_ITSELF.test(reply)) return '';
  return right ? 'Right.' : 'No.';
}
