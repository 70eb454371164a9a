import { TICK_S } from '../model';
import type * as Card from './jobs/card';
import type * as Fit from './jobs/fit';
import type * as Falls from './jobs/falls';
import type * as Figures from './jobs/figures';
import type * as Correct from './jobs/correct';
import type * as Grade from './jobs/grade';
import type * as Jig from './jobs/jig-for';
import type * as Limits from './jobs/limits';
import type * as Plan from './jobs/plan';
import type * as Poll from './jobs/poll';
import type * as Questions from './jobs/question';
import type * as Runs from './jobs/runs';
import type * as Said from './jobs/said';
import type * as Weights from './jobs/weights';

/** A piece of work that takes more of the model than a page or a server has time for. */
export interface Job<Given, Made> {
  /** The work itself. It is fetched when it is first wanted: a lesson needs no question's code. */
  load: () => Promise<(given: Given, tell?: (share: number) => void) => Made>;
  /**
   * Done in one go where there is a thread for it, and cancelled by ending that thread: work of so many
   * runs that beginning it again after each, as slices do, would take longer than the runs.
   */
  isWhole?: boolean;
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
  /** Runs that are no tries, with all that came of them. */
  runs: JobOf<typeof Runs.recordRuns>;
  /** The move that would have done it. */
  correct: JobOf<typeof Correct.correct>;
  /** Whether a challenge can be done in the gear that was chosen for it. */
  canBeDone: JobOf<typeof Correct.canBeDone>;
  /** A question with its key. */
  question: JobOf<typeof Questions.question>;
  /** An answer to a question of homework, judged. */
  judge: JobOf<typeof Questions.judgeQuestion>;
  /** A number that was said of a lesson's run, judged. */
  said: JobOf<typeof Said.judged>;
  /** What is right of a lesson's options. */
  key: JobOf<typeof Said.keyed>;
  /** A question that a room votes on. */
  poll: JobOf<typeof Poll.makePoll>;
  /** The jig for a day's water. */
  jig: JobOf<typeof Jig.jigFor>;
  /** What a session of tests tells of its gear. */
  fit: JobOf<typeof Fit.fitted>;
  /** What runs come to, for a chart. */
  figures: JobOf<typeof Figures.figuresOfRuns>;
  /** How fast drags may be made so that the bait stays down, for a chart. */
  limits: JobOf<typeof Limits.contactLimits>;
  /** When a falling jig passes depths. */
  falls: JobOf<typeof Falls.fallTimes>;
  /** What each weight of the box does in a water. */
  weights: JobOf<typeof Weights.weightsFor>;
  /** What a boat card says of an outfit. */
  card: JobOf<typeof Card.cardFigures>;
  /** What one drag of it says. */
  drag: JobOf<typeof Card.dragFigure>;
  /** What an outfit does in a day's water. */
  planWeight: JobOf<typeof Plan.weightForPlan>;
  /** What the retrieves of a day do with it. */
  planMoves: JobOf<typeof Plan.movesForPlan>;
}

export type JobName = keyof Jobs;
export type GivenTo<Name extends JobName> = Parameters<Awaited<ReturnType<Jobs[Name]['load']>>>[0];
export type MadeBy<Name extends JobName> = ReturnType<Awaited<ReturnType<Jobs[Name]['load']>>>;

/** A correction, a question, a jig or a vote that was not met before, s. */
const NEW_S = 0.5;
/** A chart of weights that was not met before, s. */
const CHART_S = 10;
/** One outfit of a plan, or its moves, s. */
const PLANNED_S = 3;
/** Laying the line and reading the trace of any try, s: without it, short ones would seem to cost nothing. */
const TRY_S = 0.02;
/** A tick of a rod that is shaken wildly, at the model's own segments and step, s; of a calm one a tenth. */
const TICK_COST_S = 1e-4;
/** The model's own, see model/scenario.ts. */
const SEGMENTS = 40;

/** A test of a session that is fitted: some sixty runs, s. */
const FITTED_TEST_S = 0.25;

const few = () => NEW_S;

function costOfTry({ challenge, input }: Grade.GivenTry): number {
  const { elevation_deg, azimuth_deg } = input;
  const samples = [elevation_deg, azimuth_deg].map((angles) => [angles].flat().length);
  const ticks = Math.max(...samples) + challenge.hold_s / TICK_S;
  const { segments = SEGMENTS, step_s = TICK_S } = challenge.setup.numerics ?? {};
  return TRY_S + TICK_COST_S * ticks * (segments / SEGMENTS) * Math.max(1, TICK_S / step_s);
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
  runs: {
    load: async () => (await import('./jobs/runs')).recordRuns,
    cost_s: few,
    runs: 2,
    moves: (made) => made.flatMap(({ line }) => [line.x.buffer, line.z.buffer])
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
  said: { load: async () => (await import('./jobs/said')).judged, cost_s: few, runs: 9 },
  key: { load: async () => (await import('./jobs/said')).keyed, cost_s: few, runs: 1 },
  poll: { load: async () => (await import('./jobs/poll')).makePoll, cost_s: few, runs: 12 },
  jig: { load: async () => (await import('./jobs/jig-for')).jigFor, cost_s: few, runs: 4 },
  fit: {
    load: async () => (await import('./jobs/fit')).fitted,
    cost_s: ({ tests }) => FITTED_TEST_S * tests.length,
    runs: 700,
    isWhole: true
  },
  figures: {
    load: async () => (await import('./jobs/figures')).figuresOfRuns,
    cost_s: few,
    runs: 10
  },
  limits: {
    load: async () => (await import('./jobs/limits')).contactLimits,
    cost_s: few,
    runs: 15
  },
  falls: { load: async () => (await import('./jobs/falls')).fallTimes, cost_s: few, runs: 5 },
  weights: {
    load: async () => (await import('./jobs/weights')).weightsFor,
    cost_s: () => CHART_S,
    runs: 150
  },
  card: {
    load: async () => (await import('./jobs/card')).cardFigures,
    cost_s: () => CHART_S,
    runs: 300,
    isWhole: true
  },
  drag: { load: async () => (await import('./jobs/card')).dragFigure, cost_s: few, runs: 11 },
  planWeight: {
    load: async () => (await import('./jobs/plan')).weightForPlan,
    cost_s: () => PLANNED_S,
    runs: 60,
    isWhole: true
  },
  planMoves: {
    load: async () => (await import('./jobs/plan')).movesForPlan,
    cost_s: () => PLANNED_S,
    runs: 45,
    isWhole: true
  }
};

/** How long a piece of work may take, s. */
export function costOf<Name extends JobName>(job: Name, given: GivenTo<Name>): number {
  return (JOBS[job] as Job<GivenTo<Name>, unknown>).cost_s(given);
}
