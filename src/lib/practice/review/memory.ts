import { FSRS, generatorParameters, type FSRSState } from 'ts-fsrs';
import type { DayOf } from './days';
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
