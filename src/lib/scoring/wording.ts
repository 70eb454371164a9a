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

/**
 * What may stand in braces in words: a quantity in SI, {length:0.3048}, which is converted; or what was
 * written once for each units, {3 ft|90 cm}, where a converted number would not be a round one.
 */
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
const PAIR = /^([^|]*\S[^|]*)\|([^|]*\S[^|]*)$/;
/** Between a number and its unit, and between feet and inches: a line is never broken there. */
const GAP = /(?<=[\d½¼¾]) (?=[a-z°])|(?<=ft) (?=\d)/gi;

/** Between a number and what it counts, as in 12-lb: nor is it broken there. */
const HYPHEN = /(?<=\d)-(?=[a-z])/gi;

/** Words with each quantity in braces written in the learner's units: "Drag it 1 ft." */
export function inUnits(text: string, units: Units): string {
  const said = text.replace(BRACES, (braces, inside: string) => {
    const pair = PAIR.exec(inside);
    if (pair) return pair[units === 'metric' ? 2 : 1].replace(GAP, '\u00a0');
    const [, name, value] = QUANTITY.exec(inside) ?? [];
    return QUANTITIES[name]?.(Number(value), units) ?? braces;
  });
  return said.replace(HYPHEN, '\u2011');
}

/** The first pair of braces that inUnits cannot write, or null. */
export function wordingFault(text: string): string | null {
  for (const [braces, inside] of text.matchAll(BRACES)) {
    if (PAIR.test(inside)) continue;
    const name = QUANTITY.exec(inside)?.[1];
    if (name === undefined || !(name in QUANTITIES)) return braces;
  }
  return null;
}
