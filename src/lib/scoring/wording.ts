import {
  formatDepth,
  formatDiameter,
  formatLength,
  formatSpeed,
  formatTemperature,
  formatTime,
  formatWeight,
  type Units
} from './display';

/** What may stand in braces in a lesson's or a challenge's words, in SI: {length:0.3048}. */
const QUANTITIES: Record<string, (si: number, units: Units) => string> = {
  length: formatLength,
  depth: formatDepth,
  speed: formatSpeed,
  weight: formatWeight,
  diameter: formatDiameter,
  temperature: formatTemperature,
  time: formatTime
};

const BRACES = /\{([^{}]*)\}/g;
const QUANTITY = /^([a-z]+):(-?\d+(?:\.\d+)?)$/;

/** Words with each quantity in braces written in the learner's units: "Drag it 1 ft." */
export function inUnits(text: string, units: Units): string {
  return text.replace(BRACES, (braces, inside: string) => {
    const [, name, value] = QUANTITY.exec(inside) ?? [];
    return QUANTITIES[name]?.(Number(value), units) ?? braces;
  });
}

/** The first pair of braces that inUnits cannot write, or null. */
export function wordingFault(text: string): string | null {
  for (const [braces, inside] of text.matchAll(BRACES)) {
    const name = QUANTITY.exec(inside)?.[1];
    if (name === undefined || !(name in QUANTITIES)) return braces;
  }
  return null;
}
