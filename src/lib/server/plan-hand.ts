import { figureOf, formatShare, type FigureUnit, type TaskFigure } from '../scoring';
import type { ChallengeProgress, FigureLevel } from '../wire';

/** What a client's homework says of the hand. */
export interface ClientHand {
  /** At the task that it misses most; null where the tries are too few to tell. */
  worst: { figure: TaskFigure; level: FigureLevel } | null;
  /** Share of its moving time that the bait touched the bottom in those tries, 0–1. */
  contact: number;
  /** Ids, as homework has them, of the challenges that have had all the tries asked: no homework again. */
  done: readonly string[];
}

/** Below this share of contact the hand lifts the bait without knowing: pace comes first. */
const LOW_CONTACT = 0.85;

/** The hand in the challenge that it misses by most of a band; null before the first try. */
export function handOf(challenges: readonly ChallengeProgress[]): ClientHand | null {
  const tried = challenges.filter(({ tries }) => tries.length > 0);
  if (tried.length === 0) return null;
  const missed = ({ level }: ChallengeProgress) => level?.miss ?? -1;
  const { challenge, level, tries } = tried.reduce((a, b) => (missed(b) > missed(a) ? b : a));
  const contact = tries.reduce((sum, { graded }) => sum + graded.contact, 0) / tries.length;
  const done = challenges.filter(({ isDone }) => isDone).map((one) => one.challenge.id);
  return { worst: level && { figure: figureOf(challenge), level }, contact, done };
}

/** Lessons whose drill on land is for a task that asks no distance. */
const LESSONS: Partial<Record<string, string>> = { hops: 'hops', stones: 'feeling-rocks' };

const isOfDistance = ({ figure }: NonNullable<ClientHand['worst']>) =>
  figure.goal?.kind === 'travel';

/** The lesson whose drill on land this hand needs most. */
export function handLesson(hand: ClientHand | null): string {
  const worst = hand?.worst;
  if (!worst || worst.level.advice === 'unclear') return 'one-foot';
  if (!isOfDistance(worst)) return LESSONS[worst.figure.goal?.kind ?? ''] ?? 'one-foot';
  if (hand.contact < LOW_CONTACT || worst.level.advice === 'steady') return 'speed';
  return worst.level.advice === 'harder' ? 'slack' : 'your-hands-ruler';
}

/** Why that one, in words with quantities in braces. */
export function handWhy(hand: ClientHand | null): string {
  if (!hand) return 'Nobody knows this hand yet. Measure it.';
  const { worst, contact } = hand;
  if (!worst) return 'Too few tries to know this hand. Measure it.';
  if (isOfDistance(worst) && contact < LOW_CONTACT) {
    const share = formatShare(contact);
    return `The jig was on the bottom for ${share} of its way: too fast. Fix pace first, then distance.`;
  }
  const { figure, level } = worst;
  const off = inBraces(figure.unit, Math.abs(level.off));
  const spread = inBraces(figure.unit, level.sd);
  const what = figure.name.charAt(0).toLowerCase() + figure.name.slice(1);
  const says: Record<FigureLevel['advice'], string> = {
    lower: `On average ${off} ${figure.more}: ${what}.`,
    raise: `On average ${off} ${figure.less}: ${what}.`,
    steady: `Differs by ${spread} from try to try: same move, slower, the same every time.`,
    harder: `Off by ${off} on average, ${spread} from try to try: in the band. Next is slack.`,
    unclear: `Tries went both ${figure.less} and ${figure.more}, and there are too few to tell. Measure it.`
  };
  return says[level.advice];
}

const BRACES: Partial<Record<FigureUnit, string>> = { m: 'length', s: 'time', 'm/s': 'speed' };

/** A value of a figure in words that follow the reader's units. */
function inBraces(unit: FigureUnit, value: number): string {
  const quantity = BRACES[unit];
  if (quantity) return `{${quantity}:${value.toFixed(3)}}`;
  return unit === 'share' ? formatShare(value) : `${Math.round(value)}`;
}
