import type { HomeworkEntry } from './homework-store';

/** Whether all went out and was taken: beside a refusal nobody is task that all was sent. */
export function isAllSent(entries: readonly HomeworkEntry[]): boolean {
  return entries.length > 0 && entries.every(({ state }) => state === 'taken');
}

/** What was refused and why, each reason once. */
export function refusalsOf(entries: readonly HomeworkEntry[]): string[] {
  const reasons = entries.filter(({ state }) => state === 'refused').map(({ why }) => why ?? '');
  return [...new Set(reasons)].map((why) => {
    const { length } = reasons.filter((one) => one === why);
    return `${length} ${length === 1 ? 'was' : 'were'} not taken: ${why}`;
  });
}
