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
