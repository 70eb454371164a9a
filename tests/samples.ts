/** Set: whatever a test samples it then takes all of, as `npm run test:samples` does. */
export const TAKES_ALL = Boolean(process.env.FELTFOOT_ALL_SAMPLES);

/** How many of so many that are drawn: all of them where every sample is to be taken. */
export const fewer = (all: number, most: number): number => (TAKES_ALL ? all : most);

/**
 * So many of all, evenly spaced, with the first and the last; beside them always those that once failed, or
 * where it may. All of them where every sample is to be taken.
 */
export function sampled<T>(all: readonly T[], most: number, always: readonly T[] = []): T[] {
  if (TAKES_ALL || most >= all.length) return [...all];
  const picked = Array.from({ length: most }, (_, i) =>
    Math.round((i * (all.length - 1)) / (most - 1))
  );
  return all.filter((one, i) => picked.includes(i) || always.includes(one));
}
