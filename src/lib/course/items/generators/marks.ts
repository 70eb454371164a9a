import { dealt, drawGear, ft, inch, pick, placeWords } from '../draw';
import type { Generator } from '../generator';
import { nominalOf } from '../measure';
import { MEASURES } from '../measures';
import { shownDrag, shownHops, SLOW_S_FT } from '../moves';
import { aboutSaid_m, saidAbout, saidFeet, saidHour, saidInches, saidSeconds } from '../said';
import { bySlackRule, slackSum } from '../slack-rule';
import { markValue } from '../value-item';

const STOPS = 'Mark where it stops, from where it sits now.';
/** To a mark that no beginner's error leads to; the rule itself is explained to everyone. */
const LEFT_OVER = 'Take the slack off the tip’s move, and mark what’s left.';

/** Slack before the sweep, in; with none of it, the jig comes as far as the tip. */
const HANGING_IN = [1, 5, 6, 8, 10] as const;

const dragStop: Generator = {
  id: 'mark-drag',
  kind: 'mark',
  objective: 'one-foot',
  make: (random, share) => {
    const inches = dealt(share, HANGING_IN);
    const isTight = inches === HANGING_IN[0];
    const setup = drawGear(random, { slack_m: inch(inches) });
    const feet = pick(random, [1.5, 2, 2.5, 3, 3.5]);
    const duration_s = pick(random, [3, 4, 6]);
    const run = shownDrag(setup, ft(feet), duration_s);
    const rule = bySlackRule(run, ft(feet), inch(inches));
    if (rule === null) return null;
    return markValue({
      random,
      ask: `${placeWords(setup)} ${isTight ? 'The line is close to tight.' : `${saidInches(inches)} of slack hangs in it.`} Low rod, slow sweep: the tip goes ${saidFeet(feet)} in ${saidSeconds(duration_s)}. ${STOPS}`,
      caption: `The sweep of ${saidFeet(feet)}`,
      run,
      measure: 'travel_m',
      unknowns: isTight ? 'slack and drag' : 'drag',
      byRule: isTight ? undefined : rule.sum_m,
      right: isTight
        ? 'Right. With no slack to take up, the jig goes nearly as far as the tip.'
        : 'Right. That’s the tip’s move, minus what went into slack.',
      explain: isTight
        ? 'In a slow drag on a tight line the jig goes about as far as the tip.'
        : slackSum(feet, inches, rule.travel_m),
      errors: (key) => [
        isTight
          ? {
              id: 'half',
              value: key / 2,
              reply: 'Water doesn’t take half of it. A slow pull passes on nearly all of the tip.'
            }
          : {
              id: 'slack-ignored',
              value: ft(feet),
              reply: 'That’s as far as the tip went. Slack has to come out first.'
            },
        {
          id: 'double',
          value: 2 * ft(feet),
          reply: 'It doesn’t glide on. Bottom and water stop it when the line stops.'
        }
      ],
      other: isTight
        ? 'There’s hardly any slack: it stops close to where the tip’s move ends.'
        : LEFT_OVER
    });
  }
};

const slackDrag: Generator = {
  id: 'mark-slack-drag',
  kind: 'mark',
  objective: 'slack',
  make: (random, share) => {
    const inches = pick(random, [8, 10, 12, 14, 16, 18]);
    const setup = drawGear(random, { slack_m: inch(inches) });
    const feet = pick(random, [2, 2.5, 3, 3.5]);
    const duration_s = SLOW_S_FT * feet;
    const run = shownDrag(setup, ft(feet), duration_s);
    const rule = bySlackRule(run, ft(feet), inch(inches));
    if (rule === null) return null;
    return markValue({
      // Dealt, not drawn: also among a few of them its place on the ruler is as often one as another.
      random: () => share,
      ask: `${placeWords(setup)} ${saidInches(inches)} of slack hangs in it. The tip goes ${saidFeet(feet)} to the side in ${saidSeconds(duration_s)}. ${STOPS}`,
      caption: `The sweep of ${saidFeet(feet)}, with slack`,
      run,
      measure: 'travel_m',
      unknowns: 'drag',
      byRule: rule.sum_m,
      right: 'Right. Slack came off the tip’s move first.',
      explain: slackSum(feet, inches, rule.travel_m),
      errors: (key) => [
        {
          id: 'slack-ignored',
          value: ft(feet),
          reply: 'That’s how far the tip went. The slack has to come out first.'
        },
        {
          id: 'quarter',
          value: key / 4,
          reply: 'Slack doesn’t eat that much: once it’s out, the jig comes with the tip.'
        }
      ],
      other: LEFT_OVER
    });
  }
};

/** Hops by the rod's clock: an hour or one and a half, none past twelve. */
const HOPPED = [1, 1.5].flatMap((hours) =>
  [9, 9.5, 10, 10.5, 11]
    .filter((from) => from + hours <= 12)
    .map((from) => [from, from + hours] as const)
);

const twoHops: Generator = {
  id: 'mark-two-hops',
  kind: 'mark',
  objective: 'hops',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(2) });
    const pace_s = pick(random, [0.5, 1, 1.5]);
    const [from, to] = pick(random, HOPPED);
    const hopped = (count: number) => shownHops(setup, from, to, pace_s, count, 1.5);
    const one = nominalOf(hopped(1), 'travel_m');
    // What fails as it is said fails with the corners, too, which take up to ten times the runs.
    const added_m = nominalOf(hopped(2), 'travel_m') - aboutSaid_m(one);
    if (added_m <= MEASURES.travel_m.least) return null;
    const draft = markValue({
      random,
      ask: `${placeWords(setup)} You hop it from ${saidHour(from)} to ${saidHour(to)} o’clock in ${saidSeconds(pace_s)}, lower the rod, wait, and hop again, without the reel. The first hop brought it about ${saidAbout(one)}. Mark where it ends up.`,
      caption: 'Two hops, nothing reeled',
      run: hopped(2),
      measure: 'travel_m',
      right: 'Right. A bit past the first hop, and no more.',
      explain:
        'Lowering the rod gives line back, so the same lift gains nothing. What a hop adds off bottom is swing. Reel up what you lower.',
      errors: () => [
        {
          id: 'first',
          value: one,
          reply: 'The lift alone ends there. Off bottom it also swings in, and that adds some.'
        },
        {
          id: 'twice',
          value: 2 * one,
          reply: 'Two lifts aren’t twice the travel: lowering the rod gave the line back.'
        },
        {
          id: 'small',
          value: one / 2.5,
          reply: 'The first hop alone brought it farther than that.'
        }
      ],
      other: 'What does lowering the rod do to the line before the second lift?'
    });
    // Where the second hop adds less than can be told, where the first one ended would be the answer.
    return draft?.answer.form === 'mark' && draft.answer.key - aboutSaid_m(one) > draft.answer.band
      ? draft
      : null;
  }
};

export const markGenerators = [dragStop, slackDrag, twoHops];
