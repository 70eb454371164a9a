import { describeTry, type Challenge, type Units } from '$lib/scoring';
import { tryRuns } from '$lib/app/try';
import type { KeptTry } from '$lib/wire';

interface Tried {
  challenge: Challenge;
  tries: readonly Pick<KeptTry, 'id' | 'sent'>[];
}

/**
 * What the bait did in each try and why, by the try's id. Each costs a run of the model, so `pause` is
 * awaited before each: the page stays usable meanwhile.
 */
export async function* reasonsOf(
  all: readonly Tried[],
  units: Units,
  pause: () => Promise<void>
): AsyncGenerator<{ id: string; reason: string }> {
  for (const { challenge, tries } of all) {
    for (const { id, sent } of tries) {
      await pause();
      const graded = tryRuns.of(challenge, { id, input: sent.input });
      if (!graded) continue;
      const { did, why } = describeTry(challenge, graded, units);
      yield { id, reason: `${did} ${why}` };
    }
  }
}
