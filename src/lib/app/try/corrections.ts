import { solveCorrection, type Challenge, type Correction } from '$lib/scoring';

type Solved = Correction | null;

/** Solved once a challenge, not once an id: homework may ask the same in another water. */
const solved = new WeakMap<Challenge, Promise<Solved>>();
let solver: Worker | null = null;
let asked = 0;

/** The move that would have done it: a few dozen runs of the model. */
export function correctionOf(challenge: Challenge): Promise<Solved> {
  const before = solved.get(challenge);
  if (before) return before;
  const now = solvedBeside(challenge).catch(() => solveCorrection(challenge));
  solved.set(challenge, now);
  return now;
}

/** Rejects where the browser cannot run a worker, or it cannot solve this. */
function solvedBeside(challenge: Challenge): Promise<Solved> {
  return new Promise((settle, fail) => {
    solver ??= new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
    const working = solver;
    const ticket = ++asked;
    const hear = ({ data }: MessageEvent<{ ticket: number; correction: Solved }>) => {
      if (data.ticket !== ticket) return;
      working.removeEventListener('message', hear);
      settle(data.correction);
    };
    working.addEventListener('message', hear);
    working.addEventListener('error', fail, { once: true });
    working.postMessage({ ticket, challenge: JSON.parse(JSON.stringify(challenge)) });
  });
}
