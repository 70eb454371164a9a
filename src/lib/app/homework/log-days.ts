import { withoutPlaces, MOST, type LogEntry, type LoggedDay } from '$lib/wire';

/** Days offered to be added: what a guide has an eye on before the next trip. */
const MOST_OFFERED = 10;

/** The last days of the own log, latest first, as they would be added. */
export function daysOfLog(entries: readonly LogEntry[], at: string): LoggedDay[] {
  const days = [...new Set(entries.map(({ on }) => on))].sort().reverse().slice(0, MOST_OFFERED);
  return days.map((on) => {
    const spells = entries.filter((one) => one.on === on).sort((a, b) => (a.at < b.at ? -1 : 1));
    return { on, spells: withoutPlaces(spells.slice(-MOST.spells)), at };
  });
}

/** Each day once, as it was added last, latest first. */
export function addedDays(added: readonly LoggedDay[]): LoggedDay[] {
  const last = new Map(added.map((one) => [one.on, one]));
  return [...last.values()].sort((a, b) => (a.on < b.on ? 1 : -1));
}

/** Whether all that a day holds now was added. */
export const isAdded = (day: LoggedDay, added: readonly LoggedDay[]): boolean =>
  added.some(
    ({ on, spells }) => on === day.on && JSON.stringify(spells) === JSON.stringify(day.spells)
  );

/** "4 spells, 3 bites, 1 fish" */
export function spellsText({ spells }: LoggedDay): string {
  const sum = (what: 'bites' | 'fish') => spells.reduce((all, one) => all + one[what], 0);
  const [bites, fish] = [sum('bites'), sum('fish')];
  return [
    `${spells.length} ${spells.length === 1 ? 'stop' : 'stops'}`,
    bites === 0 ? 'no bites' : `${bites} ${bites === 1 ? 'bite' : 'bites'}`,
    fish > 0 && `${fish} fish`
  ]
    .filter(Boolean)
    .join(', ');
}
