import { compute, keepAtHand } from '$lib/compute/browser';
import { ScenarioError } from '$lib/model';
import { callOf } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { tryRuns, type KnownInput } from './try-runs';

keepAtHand('record');

/** A stored try and the challenge it was made at. */
export interface TryToRun {
  readonly challenge: Challenge;
  readonly made: KnownInput;
}

/** Shown anew more often than this, a long list would only be drawn over and over, ms. */
const TELL_MS = 100;

/**
 * Has the tries run that are not known yet, in this order and off the page. Tells at once what is
 * known, then how far it is, and whether that was all. @returns how to stop.
 */
export function runTries(tries: readonly TryToRun[], tell: (isAll: boolean) => void): () => void {
  const stop = new AbortController();
  const left = tries.filter(({ made }) => tryRuns.known(made) === undefined);
  tell(left.length === 0);
  void runThem(left, stop.signal, tell);
  return () => stop.abort();
}

/** The same for whoever needs them all. */
export function runAllTries(tries: readonly TryToRun[]): Promise<void> {
  return new Promise((done) => runTries(tries, (isAll) => isAll && done()));
}

async function runThem(
  left: readonly TryToRun[],
  signal: AbortSignal,
  tell: (isAll: boolean) => void
): Promise<void> {
  let told_ms = performance.now();
  for (const [i, one] of left.entries()) {
    await run(one, signal);
    if (signal.aborted) return;
    const isAll = i === left.length - 1;
    if (!isAll && performance.now() - told_ms < TELL_MS) continue;
    told_ms = performance.now();
    tell(isAll);
  }
}

/** Being run now, by id or, without one, by input: several lists of a page hold the same try. */
const inHand = new Map<unknown, Promise<void>>();

async function run(one: TryToRun, signal: AbortSignal): Promise<void> {
  const name = one.made.id ?? one.made.input;
  while (tryRuns.known(one.made) === undefined && !signal.aborted) {
    const before = inHand.get(name);
    if (before) {
      // Whoever began it may want it no more.
      await before;
      continue;
    }
    const now = runOnce(one, signal).finally(() => inHand.delete(name));
    inHand.set(name, now);
    await now;
  }
}

async function runOnce({ challenge, made }: TryToRun, signal: AbortSignal): Promise<void> {
  try {
    const ran = await compute.ask(
      'record',
      { challenge, input: made.input, call: callOf(made, challenge) },
      { signal }
    );
    tryRuns.learn(challenge, made, ran);
  } catch (error) {
    if (signal.aborted) return;
    if (!(error instanceof ScenarioError)) throw error;
    tryRuns.learn(challenge, made, null);
  }
}
