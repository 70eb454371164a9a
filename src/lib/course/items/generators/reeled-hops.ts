import { dealt, drawGear, ft, inch, pick, placeWords, shuffled } from '../draw';
import type { Generator } from '../generator';
import { nominalOf } from '../measure';
import { shownHops } from '../moves';
import { aboutSaid_m, saidAbout, saidHour } from '../said';
import { chooseValue } from '../value-item';

/** Past this hour the rod is out of sweep. */
const LAST_HOUR = 11;
/** Hops by the rod's clock: an hour or one and a half. */
const HOPPED = [1, 1.5].flatMap((hours) =>
  [9, 9.5, 10]
    .filter((from) => from + hours <= LAST_HOUR)
    .map((from) => [from, from + hours] as const)
);
/** What is slower than this is a lift and no hop, s. */
const HOPS_S = [0.5, 0.7, 0.8, 1] as const;
const PAUSE_S = 1.5;

/** One hop, two hops and three hops' worth are right as often as one another. */
const DEALT = [
  { hops: 2, isReeled: false },
  { hops: 3, isReeled: false },
  { hops: 2, isReeled: true },
  { hops: 2, isReeled: true },
  { hops: 3, isReeled: true },
  { hops: 3, isReeled: true }
] as const;
type Dealt = (typeof DEALT)[number];

/**
 * Swing off bottom adds to each hop; a question is only asked where the model is within this share of
 * whole hops, so that who counts hops is right. A design value.
 */
const WHOLE_HOPS = 0.2;

const HOPS_SAID = { 2: 'twice', 3: 'three times' } as const;
const LAST_SAID = { 2: 'second', 3: 'third' } as const;

const RIGHT = {
  kept: 'Right. You kept what each hop gained.',
  given: 'Right. The next lift only takes up what lowering the rod gave back.'
} as const;

/** To whoever takes it for so many whole hops, which it was not. */
function wrongReply(worth: number, { hops, isReeled }: Dealt): string {
  if (worth === 1) return 'That’s all you’d get without the reel. Here you took up the slack.';
  if (worth > hops) return 'You only hopped it twice.';
  if (isReeled) return 'That’s two hops’ worth, and you made three.';
  if (worth === hops)
    return 'Not without the reel: each time you lower the rod, it all goes slack again.';
  return 'Even the second lift starts with slack, so it gains nothing.';
}

/** What hops add up to: with the reel taking up slack, and without it. */
const reeledHops: Generator = {
  id: 'hops-and-reel',
  kind: 'choose',
  objective: 'hops',
  make: (random, share) => {
    const setup = drawGear(random, { slack_m: inch(2), cast_m: ft(pick(random, [45, 55, 65])) });
    const pace_s = pick(random, HOPS_S);
    const [from, to] = pick(random, HOPPED);
    const dealing = dealt<Dealt>(share, DEALT);
    const { hops, isReeled } = dealing;
    const one_m = nominalOf(shownHops(setup, from, to, pace_s, 1, PAUSE_S), 'travel_m');
    const reel_m = isReeled ? one_m : 0;
    const run = shownHops(setup, from, to, pace_s, hops, PAUSE_S, reel_m);
    const right = isReeled ? hops : 1;
    const byRule = right * one_m;
    if (Math.abs(nominalOf(run, 'travel_m') / byRule - 1) > WHOLE_HOPS) return null;
    const said_m = aboutSaid_m(one_m);
    const reel = isReeled
      ? 'reel up the slack, and go again'
      : 'leave the reel alone, and go again';
    return chooseValue({
      ask: `${placeWords(setup)} You hop it ${HOPS_SAID[hops]}, from ${saidHour(from)} to ${saidHour(to)} on the clock. After a hop you lower the rod, ${reel}. In the model the first hop brought it ${saidAbout(said_m)}. About how far has it come after the ${LAST_SAID[hops]}?`,
      caption: isReeled ? 'Hops, with slack reeled up' : 'Hops, with nothing reeled',
      run,
      measure: 'travel_m',
      unknowns: 'drag',
      byRule,
      says: (m) => `about ${saidAbout(Math.round(m / one_m) * said_m)}`,
      right: isReeled ? RIGHT.kept : RIGHT.given,
      explain: isReeled
        ? 'The rod moves it, the reel keeps it: each hop starts on tight line, where the last one ended.'
        : 'Only the reel keeps line. Off bottom each hop still swings in a little, and that’s all it adds.',
      errors: () =>
        shuffled(
          random,
          [1, 2, 3].filter((worth) => worth !== right)
        ).map((worth) => ({
          id: `worth${worth}`,
          value: worth * one_m,
          reply: wrongReply(worth, dealing)
        }))
    });
  }
};

export const reelings = [reeledHops];
