import { solveCorrection, type Challenge, type Correction } from '$lib/scoring';

type Solved = Correction | null;

/** Solved once a challenge: a few dozen runs of the model. */
const solved = new Map<string, Promise<Solved>>();
let solver: Worker | null = null;

/** The move that would have done it. */
export function correctionOf(challenge: Challenge): Promise<Solved> {
  const before = solved.get(challenge.id);
  if (before) return before;
  const now = solvedBeside(challenge).catch(() => solveCorrection(challenge));
  solved.set(challenge.id, now);
  return now;
}

/** Rejects where the browser cannot run a worker, or it cannot solve this. */
function solvedBeside(challenge: Challenge): Promise<Solved> {
  return new Promise((settle, fail) => {
    solver ??= new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
    const working = solver;
    const hear = ({ data }: MessageEvent<{ id: string; correction: Solved }>) => {
      if (data.id !== challenge.id) return;
      working.removeEventListener('message', hear);
      settle(data.correction);
    };
    working.addEventListener('message', hear);
    working.addEventListener('error', fail, { once: true });
    working.postMessage(challenge);
  });
}
