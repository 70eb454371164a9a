import type { Units } from '$lib/scoring';

const HOUR_MIN = 60;

/** By the clock when each part begins, and last when all is over: "7:06 am", "07:06". @param start "07:00" */
export function clockTimes(
  start: string,
  blocks: readonly { minutes: number }[],
  units: Units
): string[] {
  const [hours, minutes] = start.split(':').map(Number);
  let at_min = hours * HOUR_MIN + minutes;
  const times = [at_min, ...blocks.map((block) => (at_min += block.minutes))];
  return times.map((one) => clockText(one, units));
}

function clockText(at_min: number, units: Units): string {
  const hour = Math.floor(at_min / HOUR_MIN) % 24;
  const minute = String(at_min % HOUR_MIN).padStart(2, '0');
  if (units === 'metric') return `${String(hour).padStart(2, '0')}:${minute}`;
  return `${hour % 12 || 12}:${minute} ${hour < 12 ? 'am' : 'pm'}`;
}
