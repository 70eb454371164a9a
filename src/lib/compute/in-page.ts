import type { Slicing } from './in-slices';
import type { JobRequest, HostPort, Told } from './messages';
import { serve } from './serve';

/** Both sides in one thread: where there is no other, the work is done in slices between all else. */
export function inPagePort(pace: Slicing): HostPort {
  let toWorker: (asked: JobRequest) => void = () => {};
  let toAsker: (told: Told) => void = () => {};
  let isClosed = false;
  serve(
    {
      post: (told) => !isClosed && toAsker(told),
      onmessage: (hear) => (toWorker = hear)
    },
    pace
  );
  return {
    // A turn later, as from another thread: nobody is answered while still asking.
    post: (asked) => queueMicrotask(() => toWorker(asked)),
    onmessage: (hear) => (toAsker = hear),
    onend: () => {},
    close: () => (isClosed = true)
  };
}
