import type * as Correct from './jobs/correct';
import type * as Grade from './jobs/grade';
import type * as Jig from './jobs/jig';
import type * as Poll from './jobs/poll';
import type * as Questions from './jobs/question';

/** A piece of work that takes more of the model than a page or a server has time for. */
export interface Job<Given, Made> {
  /** The work itself. It is fetched when it is first wanted: a lesson needs no question's code. */
  load: () => Promise<(given: Given) => Made>;
  /** How long it may take, s: what a queue counts by. */
  cost_s: (given: Given) => number;
  /** Runs of the model that it usually takes, for whoever shows how far it is. */
  runs: number;
  /** What goes over to the other side as it is and is not copied. */
  moves?: (made: Made) => ArrayBufferLike[];
}

type JobOf<Work extends (given: never) => unknown> = Job<Parameters<Work>[0], ReturnType<Work>>;

/** All there are. Given and made are plain data: they go between threads. */
export interface Jobs {
  /** Marks of a try. */
  grade: JobOf<typeof Grade.grade>;
  /** A try with all that came of it. */
  record: JobOf<typeof Grade.record>;
  /** The move that would have done it. */
  correct: JobOf<typeof Correct.correct>;
  /** Whether a challenge can be done in the gear that was chosen for it. */
  canBeDone: JobOf<typeof Correct.canBeDone>;
  /** A question with its key. */
  question: JobOf<typeof Questions.question>;
  /** An answer to a question of homework, judged. */
  judge: JobOf<typeof Questions.judgeQuestion>;
  /** A question that a room votes on. */
  poll: JobOf<typeof Poll.makePoll>;
  /** The jig for a day's water. */
  jig: JobOf<typeof Jig.jigFor>;
}

export type JobName = keyof Jobs;
export type GivenTo<Name extends JobName> = Parameters<Awaited<ReturnType<Jobs[Name]['load']>>>[0];
export type MadeBy<Name extends JobName> = ReturnType<Awaited<ReturnType<Jobs[Name]['load']>>>;

/** Work whose code a page holds already, so that nothing has to be fetched for it. */
export type AtHand = { [Name in JobName]?: Awaited<ReturnType<Jobs[Name]['load']>> };

/** A correction, a question, a jig or a vote that was not met before, s. */
const NEW_S = 0.5;
/** A sample of a rod that is shaken wildly, s; of a calm one a tenth. */
const SAMPLE_S = 1e-4;

const few = () => NEW_S;

function costOfTry({ input: { elevation_deg, azimuth_deg } }: Grade.GivenTry): number {
  const samples = [elevation_deg, azimuth_deg].map((angles) => [angles].flat().length);
  return SAMPLE_S * Math.max(...samples);
}

export const JOBS: Jobs = {
  grade: {
    load: async () => (await import('./jobs/grade')).grade,
    cost_s: costOfTry,
    runs: 1
  },
  record: {
    load: async () => (await import('./jobs/grade')).record,
    cost_s: costOfTry,
    runs: 1,
    moves: ({ line }) => [line.x.buffer, line.z.buffer]
  },
  correct: { load: async () => (await import('./jobs/correct')).correct, cost_s: few, runs: 25 },
  canBeDone: {
    load: async () => (await import('./jobs/correct')).canBeDone,
    cost_s: few,
    runs: 25
  },
  question: { load: async () => (await import('./jobs/question')).question, cost_s: few, runs: 12 },
  judge: {
    load: async () => (await import('./jobs/question')).judgeQuestion,
    cost_s: few,
    runs: 12
  },
  poll: { load: async () => (await import('./jobs/poll')).makePoll, cost_s: few, runs: 12 },
  jig: { load: async () => (await import('./jobs/jig')).jigFor, cost_s: few, runs: 4 }
};
