/**
 * Density of air-free fresh water at one atmosphere, kg/m³, for 0–40 °C.
 * Kell 1975, J. Chem. Eng. Data 20, 97, eq. 16 (the denominator is 1 + 16.879850e-3 t).
 */
export function waterDensity(temperature_C: number): number {
  const t = temperature_C;
  const numerator =
    999.83952 +
    t *
      (16.945176 +
        t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
  return numerator / (1 + 16.87985e-3 * t);
}

/**
 * Viscosity of liquid water, Pa·s. IAPWS R12-08, eqs. 10–12, without the critical enhancement
 * (below 1e-4 away from the critical point).
 */
export function waterViscosity(temperature_C: number, density_kg_m3?: number): number {
  const density = density_kg_m3 ?? waterDensity(temperature_C);
  const reducedTemperature = (temperature_C + 273.15) / 647.096;
  const reducedDensity = density / 322;

  let dilute = 0;
  for (let i = 0; i < DILUTE.length; i++) dilute += DILUTE[i] / reducedTemperature ** i;
  const mu0 = (100 * Math.sqrt(reducedTemperature)) / dilute;

  const a = 1 / reducedTemperature - 1;
  const b = reducedDensity - 1;
  let residual = 0;
  for (const [i, j, h] of RESIDUAL) residual += h * a ** i * b ** j;
  return mu0 * Math.exp(reducedDensity * residual) * 1e-6;
}

/** IAPWS R12-08, table 1. */
const DILUTE = [1.67752, 2.20462, 0.6366564, -0.241605];

/** IAPWS R12-08, table 2: [i, j, H_ij]. */
const RESIDUAL: readonly (readonly [number, number, number])[] = [
  [0, 0, 5.20094e-1],
  [1, 0, 8.50895e-2],
  [2, 0, -1.08374],
  [3, 0, -2.89555e-1],
  [0, 1, 2.22531e-1],
  [1, 1, 9.99115e-1],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 1.20573e-1],
  [0, 2, -2.81378e-1],
  [1, 2, -9.06851e-1],
  [2, 2, -7.72479e-1],
  [3, 2, -4.89837e-1],
  [4, 2, -2.5704e-1],
  [0, 3, 1.61913e-1],
  [1, 3, 2.57399e-1],
  [0, 4, -3.25372e-2],
  [3, 4, 6.98452e-2],
  [4, 5, 8.72102e-3],
  [3, 6, -4.35673e-3],
  [5, 6, -5.93264e-4]
];

export interface Water {
  readonly density_kg_m3: number;
  readonly viscosity_Pa_s: number;
}

export function waterAt(temperature_C: number): Water {
  const density_kg_m3 = waterDensity(temperature_C);
  return { density_kg_m3, viscosity_Pa_s: waterViscosity(temperature_C, density_kg_m3) };
}
