const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeZone: 'UTC' });

/** A day, or the day of a time in UTC, as it is read here: 2031-05-09 is 9 May 2031. */
export function dayText(iso: string): string {
  return DAY.format(new Date(iso));
}

const MOMENT = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** A time as the reader's clock has it: "9 May 2031, 08:05" */
export function momentText(iso: string): string {
  return MOMENT.format(new Date(iso));
}
