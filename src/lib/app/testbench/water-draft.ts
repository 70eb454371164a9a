import { parseSetup, ScenarioError } from '$lib/model';
import { typedLength_m, typedTemperature_C, type Units } from '$lib/scoring';
import type { TestSession } from '$lib/wire';
import { written } from '$lib/app/gear';

/** What of a session's water and start is typed. */
export interface WaterDraft {
  depth: string;
  temperature: string;
  cast: string;
  slack: string;
}

export const WATER_NAMES: Record<keyof WaterDraft, string> = {
  depth: 'Depth',
  temperature: 'Water',
  cast: 'Jig out from the rod',
  slack: 'Slack you leave'
};

export function waterDraftOf({ gear }: Pick<TestSession, 'gear'>, units: Units): WaterDraft {
  const { length, temperature } = written(units);
  const { water, start } = parseSetup(gear);
  return {
    depth: length(water.depth_m),
    temperature: temperature(water.temperature_C),
    cast: length(start.bait_x_m),
    slack: length(start.slack_m ?? 0)
  };
}

/** The gear with this water, or what is wrong with the draft. */
export function readWater(
  draft: WaterDraft,
  gear: TestSession['gear'],
  units: Units
): { gear: TestSession['gear'] } | { field: keyof WaterDraft; says: string } {
  const isMetric = units === 'metric';
  const long = (text: string) => typedLength_m(text, isMetric ? 'm' : 'ft');
  const depth_m = long(draft.depth);
  const bait_x_m = long(draft.cast);
  const slack_m = typedLength_m(draft.slack, isMetric ? 'cm' : 'in');
  const temperature_C = typedTemperature_C(draft.temperature, isMetric ? 'C' : 'F');
  const bad = (field: keyof WaterDraft, like: string) => ({
    field,
    says: `${WATER_NAMES[field]} must be like ${like}.`
  });
  if (depth_m === null) return bad('depth', isMetric ? '2.5 m' : '8 ft');
  if (temperature_C === null) return bad('temperature', isMetric ? '15 °C' : '60 °F');
  if (bait_x_m === null) return bad('cast', isMetric ? '12 m' : '40 ft');
  if (slack_m === null) return bad('slack', isMetric ? '15 cm' : '6 in');
  const made = {
    ...gear,
    water: { ...gear.water, depth_m, temperature_C },
    start: { ...gear.start, bait_x_m, slack_m }
  };
  try {
    parseSetup(made);
    return { gear: made };
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    const field = FIELDS[error.path] ?? 'depth';
    return { field, says: `${WATER_NAMES[field]} is out of range. Check the unit.` };
  }
}

const FIELDS: Readonly<Record<string, keyof WaterDraft>> = {
  'water.depth_m': 'depth',
  'water.temperature_C': 'temperature',
  'start.bait_x_m': 'cast',
  'start.slack_m': 'slack'
};
