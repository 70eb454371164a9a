import { parentPort } from 'node:worker_threads';
import { serve } from '../compute';

/** A cancelled job ends and a new one is heard of within this, ms. */
const SLICE_MS = 20;

// The thread beside the server's own that runs the model where that takes long, see compute.ts.
if (parentPort) {
  const asker = parentPort;
  serve(
    {
      post: (told, moves = []) => asker.postMessage(told, moves as ArrayBuffer[]),
      onmessage: (hear) => asker.on('message', hear)
    },
    { slice_ms: SLICE_MS, breathe: () => new Promise((next) => setImmediate(next)) }
  );
}
