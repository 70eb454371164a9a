import { LiveRun } from '$lib/model';
import { inTurns } from './in-turns';
import { painted } from './painted';
import type { TryTask } from './try-task';

/**
 * Lays a task's line once the water is on the screen, each piece in a task of its own.
 * @param isWanted whether nobody has laid it at once meanwhile
 * @param then gets no run where the line cannot be laid: that is told as it is laid at once
 */
export async function laidInTurns(
  { setup, start }: TryTask,
  isWanted: () => boolean,
  then: (laid?: LiveRun) => void
): Promise<void> {
  await painted();
  const laid = await inTurns(LiveRun.laidInPieces(setup, start), isWanted).catch(() => null);
  if (isWanted()) then(laid ?? undefined);
}
