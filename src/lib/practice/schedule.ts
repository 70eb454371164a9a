import { CHECK_AFTER_MS, ENDED_BY_GOOD, TRIES, type Phase } from './design';
import type { GuessQuantity } from '../scoring';
import { isGood, judgeCheck, type JudgedTry, type CheckResult } from './mastery';

/** A try as the schedule reads it. */
export interface ScheduledTry extends JudgedTry {
  /** When it was made, ms since 1970 in UTC. */
  at_ms: number;
  phase: Phase;
}

/**
 * `new`: not begun; `practising`; `resting`: practised, the check is not due yet; `mastered`: passed
 * the first check; `kept`: passed the second too; `lapsed`: was mastered, and failed the second.
 */
export type Standing = 'new' | 'practising' | 'mastered' | 'kept' | 'lapsed';

/** A part of practice that was gone through. */
export interface DonePart {
  phase: Phase;
  made: number;
  good: number;
}

/** Where a learner stands with one challenge, and what comes next. */
export interface Progress {
  standing: Standing;
  /** The phase that the next try belongs to. */
  phase: Phase;
  /** Tries made in that phase; those of a check that was broken off are not among them. */
  made: number;
  left: number;
  /** The part of practice that was ended last. */
  done: DonePart | null;
  /** When the next check may be made, ms; null while there is practice to do. */
  due_ms: number | null;
  checks: readonly (CheckResult & { at_ms: number })[];
}

const ORDER = ['seen', 'half_seen', 'unseen'] as const;
/** A check is one sitting: its tries lie no further apart than this, ms. */
const SITTING_MS = 2 * 3_600_000;

/**
 * Reads one drill's tries, in any order, as of `now_ms`. Practice goes seen, half seen, unseen,
 * as many tries each as the design says, or fewer where they went well; a try of a later phase does not count for an earlier one.
 * Then a check at least a day after the last practice, and another at least 7 days after the first
 * was passed. A failed check leads back to unseen practice and, if it was the second, is a lapse.
 */
export function drillProgressOf(
  tries: readonly ScheduledTry[],
  now_ms: number,
  asks: GuessQuantity
): Progress {
  const walk = new Walk(asks);
  for (const made of [...tries].sort((a, b) => a.at_ms - b.at_ms)) walk.take(made);
  return walk.progress(now_ms);
}

class Walk {
  private standing: Standing = 'new';
  private stage = 0;
  private made = 0;
  private good = 0;
  private goodInARow = 0;
  private done: DonePart | null = null;
  private last_ms = 0;
  private due_ms: number | null = null;
  private check: ScheduledTry[] = [];
  private readonly checks: (CheckResult & { at_ms: number })[] = [];

  constructor(private readonly asks: GuessQuantity) {}

  take(made: ScheduledTry): void {
    if (this.standing === 'new') this.standing = 'practising';
    if (this.due_ms === null) this.practise(made);
    else if (made.phase !== 'kept') this.refresh(made);
    else if (made.at_ms >= this.due_ms) this.checked(made);
    this.last_ms = made.at_ms;
  }

  progress(now_ms: number): Progress {
    const { standing, due_ms, checks, done } = this;
    const isOpen = this.check.length > 0 && now_ms - this.last_ms <= SITTING_MS;
    const phase = due_ms === null ? ORDER[this.stage] : 'kept';
    const made = due_ms === null ? this.made : isOpen ? this.check.length : 0;
    const hasMore = standing !== 'kept' || due_ms !== null;
    return { standing, phase, made, left: hasMore ? TRIES[phase] - made : 0, done, due_ms, checks };
  }

  private practise(made: ScheduledTry): void {
    const { phase, at_ms } = made;
    if (this.standing === 'kept' || phase !== ORDER[this.stage]) return;
    const isAsAsked = isGood(made, this.asks);
    this.made++;
    if (isAsAsked) this.good++;
    this.goodInARow = isAsAsked ? this.goodInARow + 1 : 0;
    const isEnded = this.goodInARow >= (ENDED_BY_GOOD[phase] ?? Infinity);
    if (this.made < TRIES[phase] && !isEnded) return;
    this.done = { phase, made: this.made, good: this.good };
    this.begin();
    if (this.stage < ORDER.length - 1) this.stage++;
    else this.due_ms = at_ms + CHECK_AFTER_MS[0];
  }

  /** Practice before the first check puts it off: what was just practised shows nothing kept. */
  private refresh({ at_ms }: ScheduledTry): void {
    this.check = [];
    const gap_ms = CHECK_AFTER_MS[0];
    this.due_ms = Math.max(this.due_ms ?? 0, at_ms + gap_ms);
  }

  private checked(made: ScheduledTry): void {
    if (made.at_ms - this.last_ms > SITTING_MS) this.check = [];
    this.check.push(made);
    if (this.check.length < TRIES.kept) return;
    const result = judgeCheck(this.check, this.asks);
    this.checks.push({ ...result, at_ms: made.at_ms });
    this.check = [];
    if (result.isPassed) this.passed(made.at_ms);
    else this.failed();
  }

  private passed(at_ms: number): void {
    const isSecond = this.standing === 'mastered';
    this.standing = isSecond ? 'kept' : 'mastered';
    this.due_ms = isSecond ? null : at_ms + CHECK_AFTER_MS[1];
  }

  private failed(): void {
    this.standing = this.standing === 'mastered' ? 'lapsed' : this.standing;
    this.stage = ORDER.length - 1;
    this.due_ms = null;
    this.begin();
  }

  private begin(): void {
    this.made = this.good = this.goodInARow = 0;
  }
}
