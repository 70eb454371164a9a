import { dealt, drawGear, ft, inch, pick, placeWords, shuffled, several } from '../draw';
import type { Generator } from '../generator';
import { onlyGood } from '../limits-item';
import { nominalOf } from '../measure';
import { shownDrag, SLOW_S_FT } from '../moves';
import { saidFeet, saidInches, saidMeasured, saidSeconds, saidToPick } from '../said';
import { bySlackRule, leftOfTip, SLACK_RULE, slackSum } from '../slack-rule';
import { chooseValue } from '../value-item';

/** A jig that comes within this of what was wanted came there, m: three inches. */
const NEAR_M = 0.076;

/** Slacks in half feet, so that what is to be added is one of the tips; with each place of the right one among three. */
const ADDED = [6, 12, 18].flatMap((inches) => [0, 1, 2].map((place) => ({ inches, place })));

/** As far as a low sweep takes a tip, ft. */
const TIPS_FT = [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5];

const wayOfTip: Generator = {
  id: 'tip-way-for-one-foot',
  kind: 'choose',
  objective: 'slack',
  make: (random, share) => {
    const { inches, place } = dealt(share, ADDED);
    const setup = drawGear(random, { slack_m: inch(inches) });
    // Of more slack than half of the tip's move the belly keeps so much that the lesson's sum is no guide.
    const feet = pick(
      random,
      [1, 1.5, 2, 2.5].filter((one) => 12 * one >= inches)
    );
    const added = feet + inches / 12;
    const beside = (least: number, most: number, count: number) =>
      several(
        random,
        TIPS_FT.filter((tip) => tip >= least && tip <= most),
        count
      );
    const duration_s = pick(random, [4, 5]);
    const tips = [
      ...beside(0, added - 0.5, place),
      added,
      ...beside(added + 0.5, added + 1.5, 2 - place)
    ];
    const dragged = (tip: number) => shownDrag(setup, ft(tip), duration_s);
    const cameBy = (tip: number) => nominalOf(dragged(tip), 'travel_m');
    const draft = onlyGood({
      ask: `${placeWords(setup)} ${saidInches(inches)} of slack hangs in it. You want the jig to come ${saidFeet(feet)}, in a slow drag of ${saidSeconds(duration_s)}. How far do you move the tip?`,
      limits: [
        {
          measure: 'travel_m',
          unknowns: 'drag',
          least: ft(feet) - NEAR_M,
          most: ft(feet) + NEAR_M
        }
      ],
      plans: shuffled(random, tips).map((tip) => {
        return {
          id: tipId(tip),
          says: `tip ${saidFeet(tip)}`,
          reply:
            tip === feet
              ? 'That’s what you want of the jig. The slack has to come out of the tip’s move, too.'
              : `Too ${cameBy(tip) < ft(feet) ? 'short' : 'far'}: ${leftOfTip(tip, inches)}.`,
          runs: [{ caption: `tip ${saidFeet(tip)}`, run: dragged(tip) }]
        };
      }),
      right: 'Right. What you want, plus what goes into slack.',
      explain: `${SLACK_RULE} In the model ${saidFeet(tips[place])} of tip brings it ${saidMeasured(cameBy(tips[place]))}. Reel down first and you need less.`
    });
    return draft?.answer.form === 'choose' && draft.answer.key === tipId(added) ? draft : null;
  }
};

/** The option of a tip that goes this many feet. */
function tipId(feet: number): string {
  return `f${feet * 2}`;
}

/** What hangs in the line, in. On a tight one the jig goes as far as the tip, and the question would say so itself. */
const SLACKS_IN = [6, 8, 12, 16] as const;

/** Wrong values of a drag with slack in it: how far the tip went, more, and too little. */
function offWithSlack(tip_m: number, slack_m: number, key: number) {
  return {
    tip: {
      id: 'tip',
      value: tip_m,
      reply: 'That’s as far as the tip went. Slack had to come out first.'
    },
    more: {
      id: 'more',
      value: tip_m + slack_m,
      reply: 'Slack adds nothing: the tip spends part of its move on it.'
    },
    less: {
      id: 'less',
      value: key / 1.8,
      reply: 'Slack doesn’t eat that much. Once it’s out, the jig comes with the tip.'
    },
    least: {
      id: 'least',
      value: key / 4,
      reply: 'That’s hardly a nudge. Only slack comes off the tip’s move, and the rest gets there.'
    }
  };
}
/** The right one is the lowest, the middle one or the highest, each as often. */
const ROUND_SLACK = [
  ['tip', 'more'],
  ['tip', 'less'],
  ['less', 'least']
] as const;

/** Each slack with each place of the right one among the three. */
const DEALS = SLACKS_IN.flatMap((inches) => [0, 1, 2].map((place) => ({ inches, place })));

const wayOfBait: Generator = {
  id: 'bait-way-of-slow-drag',
  kind: 'choose',
  objective: 'slack',
  make: (random, share) => {
    const { inches, place } = dealt(share, DEALS);
    const setup = drawGear(random, { slack_m: inch(inches) });
    const feet = pick(random, [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5]);
    const duration_s = SLOW_S_FT * feet;
    const run = shownDrag(setup, ft(feet), duration_s);
    const rule = bySlackRule(run, ft(feet), inch(inches));
    // Who works the sum out finds it among the options, as it is.
    if (rule === null || saidToPick(rule.sum_m) !== saidToPick(rule.travel_m)) return null;
    return chooseValue({
      ask: `${placeWords(setup)} ${saidInches(inches)} of slack hangs in it. You sweep a low rod slowly: its tip goes ${saidFeet(feet)} in ${saidSeconds(duration_s)}. How far does the jig come?`,
      caption: `The sweep of ${saidFeet(feet)}`,
      run,
      measure: 'travel_m',
      unknowns: 'drag',
      byRule: rule.sum_m,
      says: (value) => `about ${saidToPick(value)}`,
      right: 'Right. That’s what is left of the tip’s move once slack is out.',
      explain: slackSum(feet, inches, rule.travel_m),
      errors: (key) => {
        const off = offWithSlack(ft(feet), inch(inches), key);
        return ROUND_SLACK[place].map((id) => off[id]);
      }
    });
  }
};

/** A slow drag: what is left of the tip's move once slack is out is how far the jig goes. */
export const ways = [wayOfTip, wayOfBait];
