import { dayNumberOf, type Days } from '$lib/practice';

const LETTERS = '0123456789abcdefghjkmnpqrstvwxyz';
const LENGTH = 16;

/** 80 random bits. Not crypto.randomUUID, which plain http on a home network does not have. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(LENGTH));
  return Array.from(bytes, (byte) => LETTERS[byte % LETTERS.length]).join('');
}

/** The time now, as the record spells times. */
export function now(): string {
  return new Date().toISOString();
}

/** Days as this device's clock and place have them; each time by the offset that held then. */
export function localDays(at = new Date()): Days {
  const of = (time: string) => dayNumberOf(time, -new Date(time).getTimezoneOffset());
  return { today: of(at.toISOString()), of };
}

const DAY_MS = 86_400_000;

/** In this device's calendar, so many days from now. */
export const localDayAhead = (days: number): string =>
  localDay(new Date(Date.now() + days * DAY_MS));

/** Today in this device's calendar, as 2031-05-30. */
export function localDay(at = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
