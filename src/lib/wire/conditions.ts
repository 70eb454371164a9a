import * as v from 'valibot';
import { GROUND_KINDS } from '../model';
import { between } from './fields';
import type { OutfitGear } from './outfit';

export const WINDS = ['calm', 'breeze', 'strong'] as const;
export const FISH_MOODS = ['unknown', 'slow', 'active'] as const;
export const LIGHTS = ['bright', 'clouds', 'low'] as const;

/** What is known of a day's water and fish before it begins. */
export const conditions = v.strictObject({
  depth_m: between(0.5, 40),
  ground: v.picklist(GROUND_KINDS),
  temperature_C: between(0, 40),
  wind: v.picklist(WINDS),
  fish: v.picklist(FISH_MOODS)
});

export interface Conditions extends v.InferOutput<typeof conditions> {
  /** A weight that the guide has settled on; null or left out for the lightest that is down in time. */
  jig_kg?: number | null;
  /** The outfit that this weight is of. */
  outfit?: OutfitGear | null;
}
export type Wind = Conditions['wind'];
export type FishMood = Conditions['fish'];
export type Light = (typeof LIGHTS)[number];
