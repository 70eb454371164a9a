import type { ErrorScores } from '$lib/practice';

/** Bias and spread of a series, apart: "On average 12 % too far, 9 % from try to try." */
export function spreadText({ constant, variable, count }: ErrorScores): string {
  const bias = Math.round(Math.abs(constant) * 100);
  const side = constant > 0 ? 'far' : 'short';
  const average = bias === 0 ? 'On average right' : `On average ${bias} % too ${side}`;
  return count < 2 ? `${average}.` : `${average}, ${Math.round(variable * 100)} % from try to try.`;
}
