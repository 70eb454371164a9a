import { INCH_M } from '../../../model';
import { dealt, drawGear, ft, inch, pick, placeWords } from '../draw';
import type { Generator } from '../generator';
import { shownDrag } from '../moves';
import { saidFeet, saidInches, saidSeconds } from '../said';
import { bySlackRule, slackSum } from '../slack-rule';
import { markValue } from '../value-item';

const STOPS = 'Mark where it stops, from where it sits now.';
/** To a mark that no beginner's error leads to; the rule itself is explained to everyone. */
const LEFT_OVER = 'Take the slack off the tip’s move, and mark what’s left.';

/** "Give or take a few inches", as the rule is said: no mark so close is wrong, m. */
const A_FEW_INCHES_M = 3 * INCH_M;

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
      giveOrTake: A_FEW_INCHES_M,
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

export const markGenerators = [dragStop];
