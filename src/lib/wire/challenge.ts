import { DataError, parseChallenge, type Challenge } from '../scoring';
import { readBy } from './fields';

/**
 * A challenge with its water and gear, whole: what goals there are is known to scoring alone. How finely
 * the model runs is ours to say: a try at 640 segments in microseconds would take a server for hours.
 */
export const challenge = readBy<Challenge>((input) => {
  const read = parseChallenge(input);
  const { numerics } = read.setup;
  if (numerics === undefined) return read;
  throw new DataError('setup.numerics', numerics, 'is not for others to set');
});
