import type { CheckResult, Phase, Progress } from '$lib/practice';

const PHASES: Record<Phase, string> = {
  seen: 'The bait is in sight, and every try is told.',
  half_seen: 'The bait is hidden every other time. Guess before you are told.',
  unseen: 'The bait is hidden. You are told only when it went too far off.',
  kept: 'The check: the bait is hidden, and nothing is told before the end.'
};

const HOUR_MS = 3_600_000;

/** Where the learner stands with a challenge and what comes now, plainly. */
export function standingText({ standing, phase, due_ms }: Progress, now_ms: number): string {
  if (standing === 'kept') return 'It was still there after a week. It is yours.';
  if (due_ms !== null && due_ms > now_ms) {
    const practised = standing === 'mastered' ? 'Mastered, and to be checked again' : 'Practised';
    return `${practised}. The check comes in ${timeText(due_ms - now_ms)}: what counts is what is still there then.`;
  }
  const lapsed =
    standing === 'lapsed' ? 'It had gone after the week, so it is practised again. ' : '';
  return lapsed + PHASES[phase];
}

/** What the last check found, and what it wanted. */
export function checkText({ scores, inPace, missed, isPassed }: CheckResult): string {
  const bias = Math.round(Math.abs(scores.constant) * 100);
  const side = scores.constant > 0 ? 'far' : 'short';
  const found =
    `Last check: on average ${bias} % too ${side}, ${Math.round(scores.variable * 100)} % from try ` +
    `to try, ${Math.round(inPace * 100)} % at the pace asked.`;
  const wants = {
    bias: 'a truer reach (within 10 %)',
    spread: 'more even tries (within 15 %)',
    pace: 'the pace asked in 8 of 10'
  };
  return isPassed
    ? `${found} Passed.`
    : `${found} It wanted ${missed.map((one) => wants[one]).join(' and ')}.`;
}

function timeText(ms: number): string {
  const hours = Math.ceil(ms / HOUR_MS);
  if (hours <= 1) return 'an hour';
  return hours < 48 ? `${hours} hours` : `${Math.ceil(hours / 24)} days`;
}
