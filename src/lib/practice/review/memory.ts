import { FSRS, generatorParameters, type FSRSState } from 'ts-fsrs';
import { gradeOf } from './grade';
import type { StoredAnswer } from '../../wire';

/**
 * The scheduler with its published default parameters: no noise on the intervals, so that a record
 * always gives the same days, and no steps of minutes, since the set is a daily one.
 */
const scheduler = new FSRS(generatorParameters({ enable_fuzz: false, enable_short_term: false }));

/** How well one thing is remembered. */
export interface Memory {
  item: string;
  state: FSRSState;
  answers: number;
  /** Day numbers as the learner's calendar has them. */
  last_day: number;
  due_day: number;
}

/** Number of the day that an ISO time in UTC belongs to, where the learner lives. */
export type DayOf = (at: string) => number;

/** The learner's calendar, and where in it now is. */
export interface Days {
  today: number;
  of: DayOf;
}

/** Minutes in a day. */
const DAY_MIN = 1440;

/** Day number of an ISO time in UTC, counted from 1970, where clocks are `offset_min` ahead of UTC. */
export function dayNumberOf(at: string, offset_min = 0): number {
  const [year, month, day, hour, minute] = at.slice(0, 16).split(/[-T:]/).map(Number);
  const minutes = daysFromCivil(year, month, day) * DAY_MIN + hour * 60 + minute;
  return Math.floor((minutes + offset_min) / DAY_MIN);
}

/** Days since 1970-01-01 in the Gregorian calendar (H. Hinnant, "chrono-compatible date algorithms"). */
function daysFromCivil(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const ofEra = y - era * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/** What is remembered of each item, from all answers in any order. */
export function memoriesOf(
  answers: readonly StoredAnswer[],
  dayNumberOf: DayOf
): Map<string, Memory> {
  const memories = new Map<string, Memory>();
  for (const answer of [...answers].sort((a, b) => (a.at < b.at ? -1 : 1))) {
    memories.set(answer.item, after(memories.get(answer.item), answer, dayNumberOf(answer.at)));
  }
  return memories;
}

function after(before: Memory | undefined, answer: StoredAnswer, day: number): Memory {
  const elapsed = before ? day - before.last_day : 0;
  const state = scheduler.next_state(before?.state ?? null, elapsed, gradeOf(answer));
  const interval = Math.max(1, scheduler.next_interval(state.stability, elapsed));
  const answers = (before?.answers ?? 0) + 1;
  return { item: answer.item, state, answers, last_day: day, due_day: day + interval };
}

/** Chance that it would be known on that day, 0–1. */
export function recall({ state, last_day }: Memory, day: number): number {
  return scheduler.forgetting_curve(Math.max(0, day - last_day), state.stability);
}
