import type { FirstVote, PhoneView, ScreenView, VoteAdvice } from '$lib/wire';

/**
 * What the instructor does next, by what the room said. It stands on the screen that the room reads
 * before the reveal: what to do, and never how the room voted.
 */
const ADVICE: Record<VoteAdvice, string> = {
  teach: 'Next: give the hint, then vote again.',
  discuss: 'Next: two minutes with a neighbor, then vote again.',
  explain: 'Next: reveal it, and say why.',
  'explain slowly': 'Next: reveal it, and take your time on why.'
};

/** The one thing to do once a round is closed: who leads alone has nobody to ask. */
export function nextWords({
  shown,
  phase,
  isOver,
  isHelped,
  advice
}: Pick<ScreenView, 'shown' | 'phase' | 'isOver' | 'isHelped' | 'advice'>): string {
  if (isOver || phase !== 'held' || shown.kind === 'talk') return '';
  if (shown.kind === 'try') return 'Next: reveal it.';
  if (isHelped) return 'Next: vote again.';
  return advice ? ADVICE[advice] : 'No votes yet. Next: count hands, or reveal it.';
}

/** By what a hand is raised: the options are called A, B, C and so on. */
export const letterOf = (index: number) => String.fromCharCode('A'.charCodeAt(0) + index);

export const votesIn = (counts: Record<string, number>) =>
  Object.values(counts).reduce((sum, count) => sum + count, 0);

/** Who voted first and who now: without it a share of few reads as one of all. */
export function turnoutWords(first: FirstVote, counts: Record<string, number>): string {
  const hands = first.hasHandsAlone ? ' Hands from the first vote aren’t in it.' : '';
  return `${votesIn(first.counts)} voted first, ${votesIn(counts)} in this vote.${hands}`;
}

/** What a phone says of its owner's vote: taken only once the server has it. */
export function voteWords(
  { phase, isOver, ballot, aid }: Pick<PhoneView, 'phase' | 'isOver' | 'ballot' | 'aid'>,
  hasVoted: boolean,
  isWaiting: boolean
): string {
  if (isWaiting) return 'Not sent yet. It counts if it gets there before voting stops.';
  if (phase === 'open' && !isOver) {
    if (hasVoted) return 'Got it. You can still change it.';
    return ballot > 1 ? 'Once more, on your own.' : 'On your own, before you see it.';
  }
  if (aid === 'talk') return 'Tell a neighbor why you picked it. Then all vote again.';
  return 'Voting has stopped.';
}

/** What kind of round this is. */
export function roundName({ shown, ballot }: Pick<PhoneView, 'shown' | 'ballot'>): string {
  if (shown.kind === 'talk') return '';
  if (shown.kind === 'try') return shown.again || ballot > 1 ? 'Your hand, once more' : 'Your hand';
  const name = shown.kind === 'predict' ? 'Your call first' : 'Another spot';
  return ballot > 1 ? `${name}, vote ${ballot}` : name;
}

/** Phones that are here in a talk, else those that have answered. */
export function cameCount(view: Pick<ScreenView, 'shown' | 'seats' | 'away' | 'answered'>): number {
  return view.shown.kind === 'talk' ? view.seats - view.away : view.answered;
}

/**
 * What stands after a count of phones: "here" in a talk, else "of 5 tried" or "of 5 answered"; how many of
 * them have left or sleep, and that a round is closed once it is.
 */
export function cameWord(view: Pick<ScreenView, 'shown' | 'seats' | 'away' | 'phase'>): string {
  const { shown, seats, phase } = view;
  const away = view.away > 0 ? `, ${view.away} away` : '';
  if (shown.kind === 'talk') return `here${away}`;
  const [came, stopped] =
    shown.kind === 'try' ? ['tried', 'the round is closed'] : ['answered', 'voting has stopped'];
  return `of ${seats} ${came}${away}${phase === 'held' ? `, ${stopped}` : ''}`;
}

/** How the room voted, for who leads it, once the vote is closed: "A 2, B 3, C 0". */
export function splitWords({
  shown,
  split,
  phase
}: Pick<ScreenView, 'shown' | 'split' | 'phase'>): string {
  if (split === null || phase !== 'held' || shown.kind === 'talk' || shown.kind === 'try')
    return '';
  return shown.options.map(({ id }, i) => `${letterOf(i)} ${split[id] ?? 0}`).join(', ');
}

/** Whole seconds as minutes and seconds: 1:05. */
export function clock(left_s: number): string {
  return `${Math.floor(left_s / 60)}:${String(left_s % 60).padStart(2, '0')}`;
}
