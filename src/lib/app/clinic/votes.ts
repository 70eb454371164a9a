import { formatShare } from '$lib/scoring';
import type { AskedOnce } from '$lib/wire';

const TURNS = ['at first', 'in the second vote', 'in the third vote'];

/** Of fewer a share says nothing that the count does not. */
const LEAST_FOR_SHARE = 10;

/** "1 of 3", and of a roomful "80%": how many of the votes an option has. */
export const partText = (count: number, of: number): string =>
  of < LEAST_FOR_SHARE ? `${count} of ${of}` : formatShare(count / of);

/** "1 of 3 had it at first, 6 of 7 in the second vote."; of a roomful "3 of 12 had it (25%)." */
export function votesText(votes: AskedOnce['votes']): string {
  const said = votes.map(({ ballot, share, of }, i) => {
    const many = `${Math.round(share * of)} of ${of}`;
    const turn = TURNS[ballot - 1] ?? `in vote ${ballot}`;
    const when = votes.length > 1 ? ` ${turn}` : '';
    const part = of < LEAST_FOR_SHARE ? '' : ` (${formatShare(share)})`;
    return `${many}${i === 0 ? ' had it' : ''}${when}${part}`;
  });
  const [first, ...later] = votes;
  const isLeftOut = first?.hands > 0 && later.some(({ hands }) => hands === 0);
  const note = isLeftOut ? ' Hands were counted in the first vote only.' : '';
  return said.length > 0 ? `${said.join(', ')}.${note}` : '';
}

/** An option that was written to follow a letter, as a sentence of its own. */
export function asSentence(says: string): string {
  return `${says.charAt(0).toUpperCase()}${says.slice(1)}.`;
}
