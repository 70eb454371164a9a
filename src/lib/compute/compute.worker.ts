import { serve } from './serve';

/** A worker has nothing to draw: between two slices it only hears what came meanwhile, ms. */
const SLICE_MS = 20;

const { port1, port2 } = new MessageChannel();
let goOn = () => {};
port2.onmessage = () => goOn();

serve(
  {
    post: (told, moves = []) => self.postMessage(told, { transfer: moves as ArrayBuffer[] }),
    onmessage: (hear) => self.addEventListener('message', ({ data }) => hear(data))
  },
  {
    slice_ms: SLICE_MS,
    // A timer would wait four milliseconds each time.
    breathe: () =>
      new Promise((next) => {
        goOn = next;
        port1.postMessage(null);
      })
  }
);
