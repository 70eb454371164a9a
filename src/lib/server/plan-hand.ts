import { formatShare } from '../scoring';
import type { ChallengeProgress, HandAdvice, HandRuler } from '../wire';

/** What a client's homework says of the hand. */
export interface ClientHand {
  ruler: (HandRuler & { advice: HandAdvice }) | null;
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
  const missed = ({ ruler }: ChallengeProgress) =>
    ruler ? Math.max(Math.abs(ruler.bias_m), ruler.spread_m) / ruler.band_m : -1;
  const { ruler, tries } = tried.reduce((a, b) => (missed(b) > missed(a) ? b : a));
  const contact = tries.reduce((sum, { graded }) => sum + graded.contact, 0) / tries.length;
  const done = challenges.filter(({ isDone }) => isDone).map((one) => one.challenge.id);
  return { ruler, contact, done };
}

/** The lesson whose drill on land this hand needs most. */
export function handLesson(hand: ClientHand | null): string {
  if (!hand?.ruler || hand.ruler.advice === 'unclear') return 'one-foot';
  if (hand.contact < LOW_CONTACT || hand.ruler.advice === 'slower') return 'speed';
  return hand.ruler.advice === 'harder' ? 'slack' : 'your-hands-ruler';
}

/** Why that one, in words with quantities in braces. */
export function handWhy(hand: ClientHand | null): string {
  if (!hand) return 'Nobody knows this hand yet: measure it.';
  const { ruler, contact } = hand;
  if (!ruler) return 'Too few tries at a distance to know this hand: measure it.';
  const wanted = `{length:${ruler.target_m}}`;
  if (contact < LOW_CONTACT) {
    const share = formatShare(contact);
    return `The jig was on the bottom for ${share} of its way: too fast. Pace before distance.`;
  }
  const off = `{length:${Math.abs(ruler.bias_m)}}`;
  const spread = `{length:${ruler.spread_m}}`;
  const says: Record<HandAdvice, string> = {
    shorter: `Means ${wanted} and moves the jig ${off} too far: a smaller number in mind.`,
    longer: `Means ${wanted} and stops ${off} short: a larger number in mind.`,
    slower: `Differs by ${spread} from try to try: the same move, slowly and each time alike.`,
    harder: `Off by ${off} on average, ${spread} from try to try: in the band. Next is slack.`,
    unclear: `Tries at ${wanted} went both too short and too far, too few to tell: measure it.`
  };
  return says[ruler.advice];
}
