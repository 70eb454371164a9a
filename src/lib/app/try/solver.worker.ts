import { solveCorrection, type Challenge } from '$lib/scoring';

/** Solves beside the page, which goes on drawing: it takes up to a second. */
self.addEventListener(
  'message',
  ({ data }: MessageEvent<{ ticket: number; challenge: Challenge }>) => {
    self.postMessage({ ticket: data.ticket, correction: solveCorrection(data.challenge) });
  }
);
