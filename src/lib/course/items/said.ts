import { FOOT_M, OUNCE_KG } from '../../model';
import { formatLength } from '../../scoring';

/**
 * Quantities of questions as they are said in either units: what a hand would mean, not what a
 * conversion gives. The model runs feet and ounces; the metric number beside them is within a twentieth.
 */
const HALF_CM = 5;

/** What a jig is called, by its ounces. */
const WEIGHTS: Readonly<Record<number, string>> = {
  0.25: '{1/4 oz|7 g}',
  0.375: '{3/8 oz|11 g}',
  0.5: '{1/2 oz|14 g}',
  0.625: '{5/8 oz|18 g}',
  0.75: '{3/4 oz|21 g}',
  1: '{1 oz|28 g}'
};

/** Of a move: 6 in, 1 ft, 2½ ft, or 15, 30, 75 cm. */
export function saidFeet(feet: number): string {
  return `{${feet < 1 ? `${12 * feet} in` : `${halves(feet)} ft`}|${metric(0.3 * feet)}}`;
}

/**
 * Of slack, in whole inches and centimeters, 8 in, 1 ft, 1½ ft: what the sum leaves of a tip's move is then
 * right in both.
 */
export function saidInches(inches: number): string {
  return `{${feetAndInches(inches)}|${Math.round(2.5 * inches)} cm}`;
}

/** Of water and casts: whole feet, or half metres. */
export function saidOut(m: number): string {
  const half = Math.round(2 * m) / 2;
  return `{${Math.round(m / FOOT_M)} ft|${m < 10 ? half : Math.round(m)} m}`;
}

/** Of what a move comes to, roughly: 9 in, 1½ ft, 2½ ft, or 25 cm, 80 cm. */
export function saidAbout(m: number): string {
  const inches = Math.round(m / FOOT_M / 0.25) * 3;
  const isFeet = inches === 12 || inches === 18 || inches >= 24;
  const round = !isFeet ? `${inches} in` : `${halves(Math.round((2 * m) / FOOT_M) / 2)} ft`;
  return `{${round}|${metric(m)}}`;
}

/** Of how far a jig falls in a second: 9 in, 1¾ ft, 2 ft, or 25, 55, 60 cm. */
export function saidFall(m: number): string {
  const quarters = Math.round((4 * m) / FOOT_M);
  return `{${quarters < 4 ? `${3 * quarters} in` : inQuarters(quarters)}|${metric(m)}}`;
}

/** Of what one picks among, alike in length: 7 in, 1¼ ft, 2½ ft, or 20, 40, 75 cm. */
export function saidToPick(m: number): string {
  const inches = Math.round((12 * m) / FOOT_M);
  const round = inches < 12 ? `${inches} in` : inQuarters(Math.round((4 * m) / FOOT_M));
  return `{${round}|${metric(m)}}`;
}

/** Of a sum, to the inch: 9 in, 1 ft 2 in, 1½ ft, 2 ft 5 in, or 25, 35, 45, 75 cm. */
export function saidToTheInch(m: number): string {
  return `{${feetAndInches(Math.round((12 * m) / FOOT_M))}|${metric(m)}}`;
}

/** The same of what came of a move: beside a sum it is said as the sum is, exact in metric too. */
export function saidMeasured(m: number): string {
  const exact = formatLength(m, 'metric').replace('\u00a0', ' ');
  return `{${feetAndInches(Math.round((12 * m) / FOOT_M))}|${exact}}`;
}

/** From a foot on in feet, halves of them in one number: what is added up in a question is said alike. */
function feetAndInches(inches: number): string {
  if (inches < 12) return `${inches} in`;
  if (inches % 6 === 0) return `${halves(inches / 12)} ft`;
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

/** The length that those words have in feet and inches, m. */
export function aboutSaid_m(m: number): number {
  const inches = Math.round(m / FOOT_M / 0.25) * 3;
  return inches < 24 ? (inches / 12) * FOOT_M : (Math.round((2 * m) / FOOT_M) / 2) * FOOT_M;
}

export function saidWeight(kg: number): string {
  const ounces = Math.round((16 * kg) / OUNCE_KG) / 16;
  const said = WEIGHTS[ounces];
  if (!said) throw new RangeError(`no jig of ${ounces} oz is in the box`);
  return said;
}

/** 0.4 seconds, half a second, 1 second, 2½ seconds. */
export function saidSeconds(s: number): string {
  if (s === 0.5) return 'half a second';
  return `${halves(s)} second${s === 1 ? '' : 's'}`;
}

/** "half past ten" as on a watch: 10:30; whole hours without. */
export function saidHour(hour: number): string {
  return Number.isInteger(hour) ? `${hour}` : `${Math.floor(hour)}:30`;
}

function inQuarters(quarters: number): string {
  return `${Math.floor(quarters / 4)}${['', '¼', '½', '¾'][quarters % 4]} ft`;
}

function halves(value: number): string {
  return value % 1 === 0.5 ? `${Math.floor(value)}½` : `${value}`;
}

function metric(m: number): string {
  const cm = Math.round((100 * m) / HALF_CM) * HALF_CM;
  // From the length itself: what was rounded once is not rounded again. 1.35 is 1.4 in a tape’s eyes, too.
  return cm < 100 ? `${cm} cm` : `${Math.round(10 * m + 1e-9) / 10} m`;
}
