const DAY = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeZone: 'UTC' });

/** A day, or the day of a time in UTC, as it is read here: 2031-05-09 is May 9, 2031. */
export function dayText(iso: string): string {
  return DAY.format(new Date(iso));
}

/** The day of a time by the reader's calendar, as it is read here. */
export function dayOfText(time: string): string {
  return dayText(calendarDay(time));
}

const MOMENT = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** A time as the reader's clock has it: "May 9, 2031, 8:05 am" */
export function momentText(iso: string): string {
  return MOMENT.format(new Date(iso)).replace(
    /\s([AP]M)$/,
    (_, half: string) => ` ${half.toLowerCase()}`
  );
}

/** The day of a time by the reader's calendar: 2031-05-09. */
export function calendarDay(iso: string): string {
  const at = new Date(iso);
  const [year, month, day] = [at.getFullYear(), at.getMonth() + 1, at.getDate()];
  return [year, month, day].map((part) => String(part).padStart(2, '0')).join('-');
}

/** Whether it was done after the last day. @param due a day, or null where none was set */
export function isLate(at: string, due: string | null): boolean {
  return due !== null && calendarDay(at) > due;
}
