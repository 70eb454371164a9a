/**
 * Unit definitions. SI inside the program; these convert once, at the edge.
 * Source: NIST SP 811, Appendix B (all exact by definition).
 */
export const FOOT_M = 0.3048;
export const INCH_M = 0.0254;
export const OUNCE_KG = 0.028349523125;
export const POUND_KG = 0.45359237;
export const POUND_FORCE_N = 4.4482216152605;

/** Standard acceleration of free fall, m/s². NIST SP 811, B.8. */
export const GRAVITY_M_S2 = 9.80665;

const DEG_PER_CLOCK_HOUR = 30;
const LEVEL_CLOCK_HOUR = 9;

/** Clock hour of the rod (nine o'clock is level, twelve upright) as elevation in degrees. */
export function clockHourToDeg(hour: number): number {
  return (hour - LEVEL_CLOCK_HOUR) * DEG_PER_CLOCK_HOUR;
}

/** Elevation of the rod in degrees (0 level, 90 upright) as a clock hour. */
export function degToClockHour(deg: number): number {
  return LEVEL_CLOCK_HOUR + deg / DEG_PER_CLOCK_HOUR;
}

export function degToRad(deg: number): number {
  return (deg * Math.PI) / 180;
}

export function fahrenheitToCelsius(f: number): number {
  return ((f - 32) * 5) / 9;
}

export function celsiusToFahrenheit(c: number): number {
  return (c * 9) / 5 + 32;
}
