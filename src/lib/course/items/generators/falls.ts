import { dealt, drawFall, ft, oz, saidLine, several, shuffled, TIED_ON, isFished } from '../draw';
import type { Generator } from '../generator';
import { fallToBottom } from '../moves';
import { nominalOf } from '../measure';
import { chooseBy, orderBy } from '../rank-item';
import { saidOut, saidWeight } from '../said';

const orderWeightsByFall: Generator = {
  id: 'order-weights-fall',
  kind: 'order',
  objective: 'weight-depth',
  make: (random) => {
    const { setup, trailer } = drawFall(random);
    const ounces = shuffled(random, several(random, [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1], 3));
    const depths = shuffled(random, several(random, [8, 12, 16, 20, 24, 30], 3));
    if (ounces.some((weight, i) => !isFished(weight, depths[i]))) return null;
    return orderBy({
      ask: `Three drops on free spool, each with ${trailer.says}, on ${saidLine(setup)}. Which takes longest to hit bottom? Longest first.`,
      rule: 'longest fall first',
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: ounces.map((weight, i) => ({
        id: `w${weight * 8}-d${depths[i]}`,
        says: `${saidWeight(oz(weight))} in ${saidOut(ft(depths[i]))}`,
        printed: [weight, depths[i]],
        run: fallToBottom({
          ...setup,
          water: { ...setup.water, depth_m: ft(depths[i]) },
          bait: { ...setup.bait, mass_kg: oz(weight) }
        })
      })),
      right: 'Right. Deeper takes longer, and so does lighter.',
      reversed: 'That’s shortest first: deep and light take longest.',
      other: 'Weigh one against the other: deeper takes longer, and so does lighter.',
      explain: 'Twice the depth takes twice the count. Four times the weight takes half the count.'
    });
  }
};

interface Tied {
  ounces: number;
  trailer: (typeof TIED_ON)[number];
}

/** Whether one of these is heavier with a smaller trailer: both then get it down sooner. */
const pointAlike = (one: Tied, other: Tied) =>
  one.ounces > other.ounces !== one.trailer.drag_area_m2 > other.trailer.drag_area_m2;

/** By the two trailers' sizes, 1.9 to 1: no two weights of the box lie between. */
const WEIGHT_OR_TRAILER =
  'The model says twice the weight just makes up for a big trailer; half again as much doesn’t. Time your own.';

/** Why a jig of another weight falls otherwise than the right one, as nobody else hears it. */
function besideTheRight(one: Tied, right: Tied, isSooner: boolean): string {
  const isHeavier = one.ounces > right.ounces;
  const isBigger = one.trailer.drag_area_m2 > right.trailer.drag_area_m2;
  const weights = `${saidWeight(oz(one.ounces))} is ${isHeavier ? 'heavier' : 'lighter'} than ${saidWeight(oz(right.ounces))}`;
  if (one.trailer === right.trailer)
    return `${weights}, with the same trailer: it’s down ${isHeavier ? 'sooner' : 'later'}.`;
  const trailer = `its trailer is ${isBigger ? 'bigger' : 'smaller'}`;
  if (pointAlike(one, right))
    return `${weights}, and ${trailer}: both get it down ${isHeavier ? 'sooner' : 'later'}.`;
  const isByWeight = isSooner === isHeavier;
  return `${weights}, and ${trailer}: the ${isByWeight ? 'weight' : 'trailer'} wins, so it’s down ${isSooner ? 'sooner' : 'later'}.`;
}

/** Why the right one is the slowest, or the fastest, of these three. */
function whyRight(best: Tied, rest: readonly Tied[], isSlowest: boolean): string {
  const isFirst = rest.every(({ ounces }) => ounces > best.ounces === isSlowest);
  const [weight, other] = isSlowest ? ['lightest', 'lighter'] : ['heaviest', 'heavier'];
  const [size, bySize] = isSlowest ? ['big', 'bigger'] : ['small', 'smaller'];
  if (!isFirst) return `Right. Its ${size} trailer beats a ${other} jig.`;
  return best.trailer === TIED_ON[isSlowest ? 1 : 0]
    ? `Right. ${isSlowest ? 'Lightest' : 'Heaviest'} of the three, with the ${size} trailer.`
    : `Right. It’s the ${weight}, and that beats a ${bySize} trailer.`;
}

/**
 * What falls fastest or slowest of some three. Between 3/8 oz with a small trailer and its neighbors no third is
 * far enough.
 */
const TIED = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1]
  .flatMap((ounces) => TIED_ON.map((trailer): Tied => ({ ounces, trailer })))
  .filter(({ ounces, trailer }) => ounces !== 3 / 8 || trailer !== TIED_ON[0]);
/**
 * How often each is asked for: the slowest and the fastest of all are seldom wrong ones, and the lightest with a
 * small trailer often is. So each is right in about one of three questions that have it.
 */
const TIMES = [4, 1, 3, 3, 3, 3, 3, 3, 3, 2, 3];
const DEALT = TIED.flatMap((one, i) => Array.from({ length: TIMES[i] }, () => one));
/** Light with a big trailer is slowest, heavy with a small one fastest: little to weigh up, so asked less. */
const PLAIN_SHARE = 0.25;

const trailers: Generator = {
  id: 'trailer-fall',
  kind: 'choose',
  objective: 'weight-depth',
  make: (random, share) => {
    const { setup } = drawFall(random, [14, 18, 22, 26, 30, 34]);
    const best = dealt(share, DEALT);
    const others = TIED.filter((one) => one !== best);
    const rest = several(random, others, 2);
    const drawn = [best, ...rest];
    if (new Set(drawn.map(({ ounces }) => ounces)).size < drawn.length) return null;
    if (new Set(drawn.map(({ trailer }) => trailer)).size === 1) return null;
    const idOf = ({ ounces, trailer }: Tied) =>
      `w${ounces * 8}-${trailer.says.replaceAll(' ', '-')}`;
    const run = ({ ounces, trailer: { drag_area_m2 } }: Tied) =>
      fallToBottom({ ...setup, bait: { mass_kg: oz(ounces), drag_area_m2 } });
    const [best_s, ...rest_s] = drawn.map((one) => nominalOf(run(one), 'fall_s'));
    const isSlowest = rest_s.every((one_s) => one_s < best_s);
    if (!isSlowest && rest_s.some((one_s) => one_s <= best_s)) return null;
    const isPlain = isSlowest
      ? best.trailer === TIED_ON[1] && drawn.every(({ ounces }) => ounces >= best.ounces)
      : best.trailer === TIED_ON[0] && drawn.every(({ ounces }) => ounces <= best.ounces);
    if (isPlain && random() > PLAIN_SHARE) return null;
    return chooseBy({
      ask: `${saidOut(setup.water.depth_m)} of water, free spool, ${saidLine(setup)}. Which falls ${isSlowest ? 'slowest' : 'fastest'}?`,
      pick: isSlowest ? 'most' : 'least',
      measure: 'fall_s',
      unknowns: 'drag',
      contenders: shuffled(random, drawn).map((one) => ({
        id: idOf(one),
        says: `${saidWeight(oz(one.ounces))} with ${one.trailer.says}`,
        reply: () => besideTheRight(one, best, isSlowest),
        run: run(one)
      })),
      right: whyRight(best, rest, isSlowest),
      explain: rest.every((one) => one.trailer !== best.trailer && pointAlike(one, best))
        ? `${isSlowest ? 'The right one is lighter and its trailer bigger: both slow it.' : 'The right one is heavier and its trailer smaller: both speed it up.'} ${WEIGHT_OR_TRAILER}`
        : WEIGHT_OR_TRAILER
    });
  }
};

export const falls = [orderWeightsByFall, trailers];
