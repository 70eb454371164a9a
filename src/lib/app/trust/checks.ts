import { cylinderDragCoefficient, minimumJerk, waterDensity, waterViscosity } from '$lib/model';
import { formatShare } from '$lib/scoring';

/** A value that others have published, and what the model makes of it here and now. */
export interface PublishedCheck {
  what: string;
  source: string;
  published: number;
  model: number;
  unit: string;
  /** How far off, as a share of what is published. */
  error: number;
}

const KELL = 'Kell 1975';
const IAPWS = 'IAPWS R12-08';
const CYLINDER = 'Wieselsberger 1922, Tritton 1959, Jayaweera & Mason 1965';
const FLASH = 'Flash & Hogan 1985';

/** Fastest of a minimum-jerk move, in lengths of the move over its time. */
function peakSpeed(): number {
  const h = 1e-4;
  return (minimumJerk(0.5 + h / 2) - minimumJerk(0.5 - h / 2)) / h;
}

/** What can be looked up and takes the model no run; the rest stands in the tests. */
export function publishedChecks(): PublishedCheck[] {
  const rows: [what: string, source: string, published: number, model: number, unit: string][] = [
    ['Water’s density at 5 °C', KELL, 999.964, waterDensity(5), 'kg/m³'],
    ['Water’s density at 25 °C', KELL, 997.045, waterDensity(25), 'kg/m³'],
    ['Water’s viscosity at 5 °C', IAPWS, 1.5182, waterViscosity(5) * 1e3, 'mPa s'],
    ['Water’s viscosity at 25 °C', IAPWS, 0.89, waterViscosity(25) * 1e3, 'mPa s'],
    ['Drag of a line across slow water, Re 10', CYLINDER, 2.87, cylinderDragCoefficient(10), ''],
    ['The same, Re 100', CYLINDER, 1.33, cylinderDragCoefficient(100), ''],
    ['The same, Re 1,000', CYLINDER, 0.98, cylinderDragCoefficient(1000), ''],
    ['A hand’s peak speed over its mean', FLASH, 1.875, peakSpeed(), '']
  ];
  return rows.map(([what, source, published, model, unit]) => {
    return { what, source, published, model, unit, error: model / published - 1 };
  });
}

/** @param error as a share @returns in words, to a tenth of a per cent */
export function errorText(error: number): string {
  const share = Math.abs(error);
  return share < 0.001 ? 'under 0.1%' : formatShare(share, 1);
}
