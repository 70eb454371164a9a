import type { Random } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords, shuffled } from '../draw';
import type { Generator } from '../generator';
import { onlyGood } from '../limits-item';
import { nominalOf } from '../measure';
import { shownDrag, SLOW_S_FT } from '../moves';
import { saidFeet, saidInches, saidMeasured, saidSeconds, saidToPick } from '../said';
import { bySlackRule, leftOfTip, SLACK_RULE, slackSum } from '../slack-rule';
import { chooseValue } from '../value-item';

/** A jig that comes within this of what was wanted came there, m: three inches. */
const NEAR_M = 0.076;

/** Slacks in half feet, so that what comes of a sum is one of the others' answers, too. */
const SLACKS_IN = [6, 12, 18] as const;

/** The sum holds give or take a few inches: what is chosen among lies a foot apart, at least. */
const APART_FT = 1;

/** Three of these, the least first. */
function threesOf(feet: readonly number[]): number[][] {
  const beyond = (one: number) => feet.filter((other) => other >= one + APART_FT);
  return feet.flatMap((a) => beyond(a).flatMap((b) => beyond(b).map((c) => [a, b, c])));
}

/** Of the slacks that may be, one by which the sum's other number is among the three, where there is one. */
function slackFor(random: Random, may: readonly number[], isAmong: (inches: number) => boolean) {
  const telling = may.filter(isAmong);
  return pick(random, telling.length > 0 ? telling : may);
}

/** Of more slack than half of the tip's move the belly keeps so much that the lesson's sum is no guide. */
const isLittleFor = (inches: number, feet: number) => inches <= 6 * feet;

/** How far the tip goes, ft: each of three is the right one as often, then none is right or wrong by itself. */
const TIP_DEALS = threesOf([1.5, 2, 2.5, 3, 3.5, 4]).flatMap((three) =>
  three.map((right) => ({ right, three }))
);
/** How far a jig may be wanted to come, ft. */
const WANTED_FT = { least: 1, most: 3 };

const wayOfTip: Generator = {
  id: 'tip-way-for-one-foot',
  kind: 'choose',
  objective: 'slack',
  make: (random, share) => {
    const { right, three } = dealt(share, TIP_DEALS);
    const may = SLACKS_IN.filter((inches) => {
      const left = right - inches / 12;
      return left >= WANTED_FT.least && left <= WANTED_FT.most && isLittleFor(inches, right);
    });
    const inches = slackFor(random, may, (one) => three.includes(right - one / 12));
    const feet = right - inches / 12;
    const setup = drawGear(random, { slack_m: inch(inches) });
    const duration_s = pick(random, [4, 5]);
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
      plans: shuffled(random, three).map((tip) => {
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
      explain: `${SLACK_RULE} In the model ${saidFeet(right)} of tip brings it ${saidMeasured(cameBy(right))}. Reel down first and you need less.`
    });
    return draft?.answer.form === 'choose' && draft.answer.key === tipId(right) ? draft : null;
  }
};

/** The option of a tip that goes this many feet. */
function tipId(feet: number): string {
  return `f${feet * 2}`;
}

/** What is said of a wrong value of a drag with slack in it; all in feet. */
function offTheSum(value: number, tip: number, slack: number): string {
  if (value === tip) return 'That’s as far as the tip went. Slack had to come out first.';
  if (value > tip) return 'Slack adds nothing: the tip spends part of its move on it.';
  return value === tip - 2 * slack
    ? 'You took the slack off twice. It comes out once.'
    : 'Slack doesn’t eat that much. Once it’s out, the jig comes with the tip.';
}

/** The wrong ones of three, each with its own words. */
function wrongOf(three: readonly number[], right: number, tip: number, slack: number) {
  return three
    .filter((value) => value !== right)
    .map((value) => ({
      id: tipId(value),
      value: ft(value),
      reply: offTheSum(value, tip, slack)
    }));
}

/** Farther no low sweep takes a tip, ft. */
const FARTHEST_TIP_FT = 5;

/** Slacks, in, by which the sum's commonest mistake is among the three, ft. */
function temptingSlacks(right: number, three: readonly number[]): number[] {
  const isGreatest = right === Math.max(...three);
  return SLACKS_IN.filter((inches) => {
    const slack = inches / 12;
    const tip = right + slack;
    // The tip's own way; beside a right one that is the greatest, the slack taken off twice.
    const mistake = isGreatest ? right - slack : tip;
    return tip <= FARTHEST_TIP_FT && isLittleFor(inches, tip) && three.includes(mistake);
  });
}

/**
 * How far the jig comes, ft. The greatest of three is right a little less often, as the tip's own way is
 * not offered with it; much less often, and it could be left out unread.
 */
const BAIT_DEALS = threesOf([1, 1.5, 2, 2.5, 3, 3.5, 4])
  .filter((three) => three.every((right) => temptingSlacks(right, three).length > 0))
  .flatMap((three) => {
    const [least, middle, greatest] = three;
    const rights = [least, least, least, middle, middle, middle, greatest, greatest];
    return rights.map((right) => ({ right, three }));
  });
/** For cold fish, and for colder ones, s for each foot of tip. Common practice, no source. */
const SLOWER_S_FT = [3, 4];

const wayOfBait: Generator = {
  id: 'bait-way-of-slow-drag',
  kind: 'choose',
  objective: 'slack',
  make: (random, share) => {
    const { right, three } = dealt(share, BAIT_DEALS);
    const inches = pick(random, temptingSlacks(right, three));
    const setup = drawGear(random, { slack_m: inch(inches) });
    const feet = right + inches / 12;
    const duration_s = pick(random, [SLOW_S_FT, ...SLOWER_S_FT]) * feet;
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
      errors: () => wrongOf(three, right, feet, inches / 12)
    });
  }
};

/** A slow drag: what is left of the tip's move once slack is out is how far the jig goes. */
export const ways = [wayOfTip, wayOfBait];
