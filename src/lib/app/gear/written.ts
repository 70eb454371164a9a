import { celsiusToFahrenheit, FOOT_M, INCH_M, OUNCE_KG } from '$lib/model';
import { formatWeight, type Units } from '$lib/scoring';

/** Feet and inches from here on, m: a shorter length is in inches alone. */
const FEET_FROM_M = 3 * FOOT_M;

/** Quantities as they stand in a field to be changed, so that reading them gives the same again. */
export function written(units: Units) {
  const isMetric = units === 'metric';
  return {
    length: (m: number) => (isMetric ? metric(m) : imperial(m)),
    weight: (kg: number) => (isMetric ? `${trimmed(kg * 1000, 2)} g` : ounces(kg)),
    diameter: (m: number) =>
      isMetric ? `${trimmed(m * 1000, 3)} mm` : `${trimmed(m / INCH_M, 5)} in`,
    temperature: (degC: number) =>
      isMetric ? `${trimmed(degC, 1)} °C` : `${trimmed(celsiusToFahrenheit(degC), 0)} °F`
  };
}

/** 0.6 oz is a weight no fraction has: then it is said in decimals. */
function ounces(kg: number): string {
  const fraction = formatWeight(kg, 'imperial').replace('\u00a0', ' ');
  const sixteenths = (kg / OUNCE_KG) * 16;
  const isFraction = Math.abs(sixteenths - Math.round(sixteenths)) < 0.02;
  return isFraction ? fraction.replaceAll('\u00a0', ' ') : `${trimmed(kg / OUNCE_KG, 3)} oz`;
}

function metric(m: number): string {
  return m < 1 ? `${trimmed(m * 100, 1)} cm` : `${trimmed(m, 3)} m`;
}

function imperial(m: number): string {
  const inches = trimmed(m / INCH_M, 2);
  if (m < FEET_FROM_M) return `${inches} in`;
  const feet = Math.floor((inches + 1e-9) / 12);
  const rest = trimmed(inches - 12 * feet, 2);
  return rest === 0 ? `${feet} ft` : `${feet} ft ${rest} in`;
}

const trimmed = (value: number, digits: number) => Number(value.toFixed(digits));
