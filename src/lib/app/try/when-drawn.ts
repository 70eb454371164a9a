import type { Challenge } from '$lib/scoring';
import type { Thumb } from './thumb';

/** One at a time, so that a list of them leaves the page its frames. */
const queue: (() => void | Promise<void>)[] = [];
const drawn = new Map<string, Thumb>();

/** Tells the drawing when it is made. @returns how to stop waiting. */
export function whenDrawn(challenge: Challenge, tell: (thumb: Thumb) => void): () => void {
  const known = drawn.get(challenge.id);
  if (known) {
    tell(known);
    return () => {};
  }
  const work = async () => {
    // It takes the model, and the page stands without it.
    const drawing = await import('./drawn-thumb').catch(() => null);
    // Without a connection the picture stays plain water.
    if (!drawing) return;
    const thumb = drawing.thumbOf(challenge);
    drawn.set(challenge.id, thumb);
    tell(thumb);
  };
  queue.push(work);
  if (queue.length === 1) setTimeout(drawNext);
  return () => {
    const at = queue.indexOf(work);
    if (at >= 0) queue.splice(at, 1, () => {});
  };
}

async function drawNext(): Promise<void> {
  await queue[0]?.();
  queue.shift();
  if (queue.length > 0) setTimeout(drawNext);
}
