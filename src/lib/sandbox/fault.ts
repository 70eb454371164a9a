import type { ScenarioError } from '$lib/model';

const names: [path: string, name: string][] = [
  ['start.slack_m', 'slack'],
  ['start.bait_x_m', 'cast'],
  ['start', 'cast, depth and slack'],
  ['water.depth_m', 'depth'],
  ['bait.mass_kg', 'bait'],
  ['line', 'line'],
  ['rod', 'rod'],
  ['wind_m_s', 'wind'],
  ['drift_m_s', 'drift'],
  ['bottom', 'bottom']
];

/** What the gear cannot do, in a learner's words; nothing has been changed by it. */
export function faultText(error: ScenarioError): string {
  const name = names.find(([path]) => error.path.startsWith(path))?.[1] ?? 'gear';
  return `That doesn’t work together: change the ${name}. The water stays as it was. (${error.message})`;
}
