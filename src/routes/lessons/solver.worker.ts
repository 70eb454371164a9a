import { solveCorrection, type Challenge } from '$lib/scoring';

/** Solves beside the page, which goes on drawing: it takes up to a second. */
self.addEventListener('message', ({ data }: MessageEvent<Challenge>) => {
  self.postMessage({ id: data.id, correction: solveCorrection(data) });
});
