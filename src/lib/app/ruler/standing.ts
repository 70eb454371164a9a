import {
  ENDED_BY_GOOD,
  PHASES,
  TRIES,
  TRY_MINUTES,
  type CheckResult,
  type DonePart,
  type Phase,
  type Progress
} from '$lib/practice';
import { formatShare, type GuessQuantity } from '$lib/scoring';

const HOW: Record<Phase, string> = {
  seen: 'You see the jig, and you’re told how each try went.',
  half_seen: 'The jig is hidden every other time. Call it then; half the time you see it after.',
  unseen: 'The jig is hidden. You’re told only about a miss.',
  kept: 'The check: the jig is hidden, and you’re told nothing until the end.'
};

const HOUR_MS = 3_600_000;
/** Less than this part of half a band off its middle has no side to speak of. */
const ON_THE_MARK = 0.25;

/** Where the learner stands with a challenge and what comes now, plainly. */
export function standingText({ standing, phase, due_ms }: Progress, now_ms: number): string {
  if (standing === 'kept') return 'It was still there after a week. It is yours.';
  if (due_ms !== null && due_ms > now_ms) {
    const practised = standing === 'mastered' ? 'Mastered. One more check to come' : 'Practiced';
    return `${practised}. The check comes in ${timeText(due_ms - now_ms)}: what you still have then is what counts.`;
  }
  const lapsed =
    standing === 'lapsed' ? 'It was gone after the week, so it’s back to practice. ' : '';
  return `${lapsed}${lengthText(phase)} ${HOW[phase]}`;
}

/** "Part 2 of 4" */
export function partName(phase: Phase): string {
  return `Part ${PHASES.indexOf(phase) + 1} of ${PHASES.length}`;
}

/** "Part 2 of 4, up to 7 minutes. 4 good ones in a row end it." Which try of how many stands with the try. */
function lengthText(phase: Phase): string {
  const row = ENDED_BY_GOOD[phase];
  const minutes = Math.round(TRIES[phase] * TRY_MINUTES);
  const sooner = row ? ` ${row} good ones in a row end it.` : '';
  return `${partName(phase)}, ${row ? 'up to ' : ''}${minutes} minutes.${sooner}`;
}

/** "Part 3: the jig is hidden. You’re told only about a miss." */
export function nextPartText(phase: Phase): string {
  return `Part ${PHASES.indexOf(phase) + 1}: ${lower(HOW[phase])}`;
}

const lower = (text: string) => `${text[0].toLowerCase()}${text.slice(1)}`;

/** "Part 1 of 4 is done: 3 of 5 tries were good." */
export function doneText({ phase, made, good }: DonePart): string {
  return `${partName(phase)} is done: ${good} of ${made} tries ${good === 1 ? 'was' : 'were'} good.`;
}

/** What came of a few tries, once all are made: "5 of 6 on the mark." */
export function onMarkText(good: number, of: number): string {
  return `${good === 0 ? 'None' : good} of ${of} on the mark.`;
}

interface Words {
  /** Which way a bias goes. */
  more: string;
  less: string;
  right: string;
  wants: Record<CheckResult['missed'][number], string>;
}

const WORDS: Record<GuessQuantity, Words> = {
  travel: {
    more: 'too far',
    less: 'too short',
    right: 'at the pace asked',
    wants: {
      bias: 'a truer reach (within 10%)',
      spread: 'more even tries (within 15%)',
      right: 'the pace asked in 8 of 10'
    }
  },
  height: {
    more: 'high',
    less: 'low',
    right: 'as high as asked',
    wants: {
      bias: 'a truer height (on average as asked)',
      spread: 'more even hops',
      right: '8 of 10 as asked'
    }
  },
  down: {
    more: 'late',
    less: 'early',
    right: 'after the touch and in time',
    wants: {
      bias: 'a truer count (on average in time)',
      spread: 'a more even count',
      right: '8 of 10 in time'
    }
  }
};

/** What the last check found, and what it wanted. */
export function checkText(
  { scores, right, missed, isPassed }: CheckResult,
  asks: GuessQuantity
): string {
  const words = WORDS[asks];
  const side = scores.constant > 0 ? words.more : words.less;
  const average =
    asks === 'travel'
      ? `${formatShare(Math.abs(scores.constant))} ${side}, ${formatShare(scores.variable)} from try to try`
      : `a little ${side}`;
  const isOn = asks !== 'travel' && Math.abs(scores.constant) < ON_THE_MARK;
  const found = `Last check: ${formatShare(right)} ${words.right}; on average ${isOn ? 'right on' : average}.`;
  return isPassed
    ? `${found} Passed.`
    : `${found} It wanted ${missed.map((one) => words.wants[one]).join(' and ')}.`;
}

function timeText(ms: number): string {
  const hours = Math.ceil(ms / HOUR_MS);
  if (hours <= 1) return 'an hour';
  return hours < 48 ? `${hours} hours` : `${Math.ceil(hours / 24)} days`;
}
