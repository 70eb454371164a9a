import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { celsiusToFahrenheit, FOOT_M, INCH_M, OUNCE_KG } from '../../src/lib/model';
import {
  formatDepth,
  formatDiameter,
  formatLength,
  formatShare,
  formatPace,
  formatSpeed,
  formatTemperature,
  formatTime,
  formatWeight,
  inUnits,
  wordingFault,
  type Units
} from '../../src/lib/scoring';
import { tied } from '../tied';

describe('what a learner reads', () => {
  const lengths: [number, string, string][] = [
    [0, '0~in', '0~cm'],
    [0.0127, '½~in', '1~cm'],
    [-0.05, '−2~in', '−5~cm'],
    [0.065, '2½~in', '7~cm'],
    [0.1, '4~in', '10~cm'],
    [0.3, '1~ft', '30~cm'],
    [0.3302, '1~ft~1~in', '33~cm'],
    [0.9997, '3~ft~3~in', '1~m'],
    [1.234, '4~ft~1~in', '1.23~m'],
    [-0.001, '0~in', '0~cm'],
    [0.301, '1~ft', '30~cm']
  ];
  test.each(lengths)('%d m is %s, or %s', (m, imperial, metric) => {
    expect(formatLength(m, 'imperial')).toBe(tied(imperial));
    expect(formatLength(m, 'metric')).toBe(tied(metric));
  });

  const weights: [number, string, string][] = [
    [OUNCE_KG / 4, '1/4~oz', '7.1~g'],
    [OUNCE_KG * 0.625, '5/8~oz', '18~g'],
    [OUNCE_KG * 0.3125, '5/16~oz', '8.9~g'],
    [OUNCE_KG * 1.5, '1½~oz', '43~g'],
    [OUNCE_KG, '1~oz', '28~g']
  ];
  test.each(weights)('%d kg is %s, or %s', (kg, imperial, metric) => {
    expect(formatWeight(kg, 'imperial')).toBe(tied(imperial));
    expect(formatWeight(kg, 'metric')).toBe(tied(metric));
  });

  test('is short on a ruler', () => {
    expect(formatLength(0.4, 'imperial', 'short')).toBe(tied('1′~4″'));
    expect(formatLength(0.4, 'metric', 'short')).toBe(tied('40~cm'));
  });

  test('has depth, speed, line, water and time in the units of the trade', () => {
    expect([formatDepth(3.35, 'imperial'), formatDepth(3.35, 'metric')]).toEqual(
      ['11~ft', '3.4~m'].map(tied)
    );
    expect([formatSpeed(0.3, 'imperial'), formatSpeed(0.256, 'metric')]).toEqual(
      ['1~ft/s', '0.26~m/s'].map(tied)
    );
    const paces = [0, 0.004, 0.06, 0.4, 5];
    expect(paces.map((m_s) => formatPace(m_s, 'imperial'))).toEqual(
      ['not at all', 'hardly at all', '1~ft in 5~s', '1~ft in 0.8~s', 'over 1~ft in 0.1~s'].map(
        tied
      )
    );
    expect(formatPace(0.25, 'metric')).toBe(tied('30~cm in 1.2~s'));
    expect([formatDiameter(3e-4, 'imperial'), formatDiameter(3e-4, 'metric')]).toEqual(
      ['0.012~in', '0.30~mm'].map(tied)
    );
    expect([formatTemperature(15, 'imperial'), formatTemperature(15, 'metric')]).toEqual(
      ['59~°F', '15~°C'].map(tied)
    );
    expect([formatTime(0.42), formatTime(2.5), formatTime(12.4)]).toEqual(
      ['0.4~s', '2.5~s', '12~s'].map(tied)
    );
    expect(formatShare(0.955)).toBe(tied('96%'));
  });
});

/** Reads a display text back: the parts of 4 ft 1½ in, added up in SI. */
const SI: Record<string, number> = {
  ft: FOOT_M,
  in: INCH_M,
  m: 1,
  cm: 0.01,
  mm: 0.001,
  oz: OUNCE_KG,
  g: 0.001,
  'ft/s': FOOT_M,
  'm/s': 1
};

function readBack(text: string): number {
  const sign = text.startsWith('−') ? -1 : 1;
  let pending = 0;
  let sum = 0;
  const apart = text.replace('−', '').replace('½', '\u00a01/2').replace('¼', '\u00a01/4');
  for (const part of apart.replace('¾', '\u00a03/4').split('\u00a0')) {
    if (part in SI) {
      sum += pending * SI[part];
      pending = 0;
      continue;
    }
    const [top, bottom = '1'] = part.split('/');
    pending += Number(top) / Number(bottom);
  }
  return sign * sum;
}

describe('read back, a figure is off by no more than half of its last place', () => {
  type Case = [string, (si: number) => string, number, number, (si: number) => number];
  const both = (format: (si: number, units: Units) => string) => ({
    imperial: (si: number) => format(si, 'imperial'),
    metric: (si: number) => format(si, 'metric')
  });
  const length = both(formatLength);
  const weight = both(formatWeight);
  const inch = (m: number) => (Math.abs(m) < 3 * INCH_M ? INCH_M / 2 : INCH_M);
  const foot_s = (m_s: number) => (m_s < 9.95 * FOOT_M ? FOOT_M / 10 : FOOT_M);
  const gram = (kg: number) => (kg < 0.01 ? 1e-4 : 1e-3);
  const cases: Case[] = [
    ['length in ft and in', length.imperial, -3, 30, inch],
    ['length in m and cm', length.metric, -3, 30, () => 0.01],
    ['depth in ft', both(formatDepth).imperial, 0, 40, () => FOOT_M],
    ['depth in m', both(formatDepth).metric, 0, 40, () => 0.1],
    ['speed in ft/s', both(formatSpeed).imperial, 0, 9, foot_s],
    ['speed in m/s', both(formatSpeed).metric, 0, 5, () => 0.01],
    ['weight in oz', weight.imperial, 0, 0.1, () => OUNCE_KG / 16],
    ['weight in g', weight.metric, 0, 0.1, gram],
    ['diameter in mm', both(formatDiameter).metric, 0, 0.001, () => 1e-5],
    ['diameter in in', both(formatDiameter).imperial, 0, 0.001, () => INCH_M / 1000]
  ];
  test.each(cases)('%s', (_, format, low, high, place) => {
    fc.assert(
      fc.property(fc.double({ min: low, max: high, noNaN: true }), (si) => {
        // A millionth of a place for the rounding of the sums here.
        expect(Math.abs(readBack(format(si)) - si)).toBeLessThan(0.500001 * place(si));
      })
    );
  });

  test('temperature in °F', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (degC) => {
        const shown = Number(formatTemperature(degC, 'imperial').split('\u00a0')[0]);
        expect(Math.abs(shown - celsiusToFahrenheit(degC))).toBeLessThan(0.500001);
      })
    );
  });
});

describe('words with quantities', () => {
  test('follow the learner’s units', () => {
    const words = 'Drag {length:0.3048} at {speed:0.1524}, {depth:10} out.';
    expect(inUnits(words, 'imperial')).toBe(tied('Drag 1~ft at 0.5~ft/s, 33~ft out.'));
    expect(inUnits(words, 'metric')).toBe(tied('Drag 30~cm at 0.15~m/s, 10~m out.'));
  });

  test('is what was written for its units, where it was written for each', () => {
    const words = 'A {7½ ft|2.3 m} rod, {12 lb|0.30 mm} line, {1 ft 6 in|45 cm} of slack.';
    expect(inUnits(words, 'imperial')).toBe(tied('A 7½~ft rod, 12~lb line, 1~ft~6~in of slack.'));
    expect(inUnits(words, 'metric')).toBe(tied('A 2.3~m rod, 0.30~mm line, 45~cm of slack.'));
  });

  test('is never broken at the hyphen of 12-lb, in braces or not', () => {
    const words = '12-lb mono, {20-lb|0.23 mm} braid, 5-second waits, 12- to 20-lb, half-seen.';
    const kept = '12!lb mono, 20!lb braid, 5!second waits, 12- to 20!lb, half-seen.';
    expect(inUnits(words, 'imperial')).toBe(kept.replaceAll('!', '\u2011'));
  });

  const faults: [string, string | null][] = [
    ['No braces at all.', null],
    ['{3 ft|90 cm}', null],
    ['{3 ft|}', '{3 ft|}'],
    ['{weight:0.0177} and {time:2}', null],
    ['{length:0.3} and {height:2}', '{height:2}'],
    ['{length:a foot}', '{length:a foot}'],
    ['{length}', '{length}'],
    ['{toString:1}', '{toString:1}']
  ];
  test.each(faults)('%s has the fault %s', (words, fault) => {
    expect(wordingFault(words)).toBe(fault);
  });
});
