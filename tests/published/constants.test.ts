import { describe, expect, test } from 'vitest';
import {
  clockHourToDeg,
  cylinderDragCoefficient,
  fahrenheitToCelsius,
  FOOT_M,
  GRAVITY_M_S2,
  INCH_M,
  minimumJerk,
  OUNCE_KG,
  POUND_FORCE_N,
  POUND_KG,
  waterDensity,
  waterViscosity
} from '../../src/lib/model';

describe('units are those of NIST SP 811, Appendix B (exact)', () => {
  test.each([
    ['foot', FOOT_M, 0.3048],
    ['inch', INCH_M, 0.0254],
    ['ounce', OUNCE_KG, 0.028349523125],
    ['pound', POUND_KG, 0.45359237],
    ['pound-force', POUND_FORCE_N, 4.4482216152605],
    ['standard gravity', GRAVITY_M_S2, 9.80665]
  ])('%s', (_name, ours, published) => expect(ours).toBe(published));

  test('they agree with each other', () => {
    expect(12 * INCH_M).toBeCloseTo(FOOT_M, 15);
    expect(16 * OUNCE_KG).toBeCloseTo(POUND_KG, 15);
    expect(POUND_KG * GRAVITY_M_S2).toBeCloseTo(POUND_FORCE_N, 12);
  });

  test('a clock hour of the rod is thirty degrees, nine is level', () => {
    expect([9, 10, 11, 12].map(clockHourToDeg)).toEqual([0, 30, 60, 90]);
  });

  test('50 °F is 10 °C', () => expect(fahrenheitToCelsius(50)).toBeCloseTo(10, 12));
});

describe('water', () => {
  // Kell 1975, J. Chem. Eng. Data 20, 97; last printed digit.
  test.each([
    [0, 999.84],
    [5, 999.964],
    [10, 999.7],
    [15, 999.1],
    [20, 998.204],
    [25, 997.045],
    [30, 995.647]
  ])('density at %d °C', (t, published) => {
    expect(Math.abs(waterDensity(t) - published)).toBeLessThan(6e-4);
  });

  // IAPWS R12-08, at 0.101325 MPa; last printed digit. Viscosity falls by 3.4 % a degree here: the
  // first row is that of the triple point, 0.01 °C (1.7918 at 0 °C).
  test.each([
    [0.01, 1.7911],
    [5, 1.5182],
    [10, 1.3059],
    [15, 1.1376],
    [20, 1.0016],
    [25, 0.89],
    [30, 0.7972]
  ])('viscosity at %f °C', (t, published) => {
    expect(Math.abs(waterViscosity(t) * 1e3 - published)).toBeLessThan(6e-5);
  });

  test('viscosity of the IAPWS R12-08 computer check, table 4: 298.15 K, 998 kg/m³', () => {
    expect(waterViscosity(25, 998) * 1e6).toBeCloseTo(889.7351, 3);
  });
});

describe('drag of a cylinder across the flow', () => {
  // Fit to Wieselsberger 1922, Tritton 1959, Jayaweera & Mason 1965.
  test.each([
    [10, 2.87],
    [20, 2.09],
    [40, 1.64],
    [100, 1.33],
    [300, 1.19],
    [1e3, 0.98],
    [3e3, 0.92],
    [1e4, 1.09]
  ])('at Re = %d', (re, published) => {
    expect(Math.abs(cylinderDragCoefficient(re) - published)).toBeLessThan(0.006);
  });

  // White, Viscous Fluid Flow: 1 + 10 Re^(−2/3), a rougher curve through the same data (from memory).
  test('stays within 13 % of the simple form of White between Re 10 and 1000', () => {
    for (let re = 10; re <= 1000; re *= 1.3) {
      const simple = 1 + 10 * re ** (-2 / 3);
      expect(Math.abs(cylinderDragCoefficient(re) / simple - 1)).toBeLessThan(0.13);
    }
  });
});

describe('a minimum-jerk move (Flash & Hogan 1985)', () => {
  const h = 1e-4;
  const us = Array.from({ length: 9999 }, (_, i) => (i + 1) * h);
  test('has a peak speed of 1.875 D/T', () => {
    const speeds = us.map((u) => (minimumJerk(u + h / 2) - minimumJerk(u - h / 2)) / h);
    expect(Math.max(...speeds)).toBeCloseTo(1.875, 4);
  });
  test('has a peak acceleration of 5.77 D/T²', () => {
    const second = us.map(
      (u) => (minimumJerk(u + h) - 2 * minimumJerk(u) + minimumJerk(u - h)) / (h * h)
    );
    expect(Math.max(...second)).toBeCloseTo(5.7735, 3);
  });
});
