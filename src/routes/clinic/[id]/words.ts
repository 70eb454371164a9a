import type { Advice } from '$lib/server/clinic-flow';

/** What the instructor does next, by what the room said. */
export const ADVICE: Record<Advice, string> = {
  teach: 'Few have it yet. Give a hint, then vote again.',
  discuss: 'The room is divided. Two minutes with a neighbour, then vote again.',
  explain: 'Most have it. Reveal, explain, and try it.'
};
