import { fahrenheitToCelsius, FOOT_M } from '../model';
import type { Units } from '../scoring';
import type { Settings, WaterNow } from './record';

const FIRST: Record<Units, WaterNow> = {
  imperial: waterOf(20 * FOOT_M, 60 * FOOT_M, fahrenheitToCelsius(60)),
  metric: waterOf(6, 18, 16)
};
function waterOf(depth_m: number, out_m: number, temperature_C: number): WaterNow {
  return { depth_m, out_m, temperature_C, ground: 'gravel', wind: 'calm' };
}

/** The water that was fished or planned last, or one to begin with. */
export const waterNow = ({ water, units }: Pick<Settings, 'water' | 'units'>): WaterNow =>
  water ?? FIRST[units];
