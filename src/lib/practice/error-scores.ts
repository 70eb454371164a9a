/** Errors of a series of tries, in the unit and with the sign of the errors: done − meant. */
export interface ErrorScores {
  count: number;
  /** CE, mean of the errors: bias. */
  constant: number;
  /** VE, their standard deviation about their own mean: inconsistency. */
  variable: number;
  /** AE, mean size of the errors. */
  absolute: number;
  /** E, root mean square of the errors; E² = CE² + VE². */
  total: number;
}

/**
 * Scores with the 1/k variance, for which E² = CE² + VE² holds exactly (Henry 1974, J. Motor Behavior
 * 6, 149; Schmidt & Lee, Motor Control and Learning). Throws RangeError when there are no errors.
 */
export function errorScores(errors: readonly number[]): ErrorScores {
  const count = errors.length;
  if (count === 0) throw new RangeError('errors must not be empty');
  const mean = (of: (error: number) => number) =>
    errors.reduce((sum, error) => sum + of(error), 0) / count;
  const constant = mean((error) => error);
  return {
    count,
    constant,
    variable: Math.sqrt(mean((error) => (error - constant) ** 2)),
    absolute: mean(Math.abs),
    total: Math.sqrt(mean((error) => error ** 2))
  };
}
