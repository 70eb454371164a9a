import * as v from 'valibot';
import type { Bite, Result } from '../../model';
import type { Units } from '../display';
import type { RunToGrade } from '../run-to-grade';
import { TOTAL_MARKS } from '../pass-mark';
import { numberIn, whole } from '../schema-parts';

/** How many of the marks a goal carries. */
export const weight = whole(1, TOTAL_MARKS);

export const length = numberIn(0, 30);

/** A goal as the marks table says it. */
export interface GoalWords {
  name: string;
  asked: string;
  reached: string;
}

/** What of a goal can be drawn where the bait is, SI; ranges are lowest, then highest. */
export interface DrawnGoal {
  /** Travel from the start, m: where the bait is to come to rest, or to stay. */
  travel_m?: readonly [number, number];
  /** Clearance above the bottom under the bait, m. */
  height_m?: readonly [number, number];
  /** Along the bottom, m/s. */
  speed_m_s?: readonly [number, number];
  /** It is to stay on the bottom while it moves. */
  isOnBottom?: true;
  /** How many hops are asked. */
  hops?: number;
  /** The hook is to hang, and then to come free. */
  freed?: true;
}

/** Which of a move's steps a fix is about: the first pull, the quickest, the way back, the rest, the reel. */
export type StepPart = 'pull' | 'snap' | 'back' | 'rest' | 'reel';

/** What a figure is counted in: it says how it is written and which ticks of an axis are even. */
export const FIGURE_UNITS = ['m', 's', 'm/s', 'share', 'count', 'marks'] as const;
export type FigureUnit = (typeof FIGURE_UNITS)[number];

/** Lowest and highest that is right, the highest null where more is right as well. */
export type AskedRange = readonly [low: number, high: number | null];

/** What an axis, a table or an export says of a figure. SI, plain data. */
export interface FigureScale {
  readonly unit: FigureUnit;
  /** What an axis of it is of: "How far the jig went". */
  readonly name: string;
  /** What less and more of it than was asked are called: "too short". */
  readonly less: string;
  readonly more: string;
  /** Null where what is asked is no range of this figure. */
  readonly asked: AskedRange | null;
}

/** The figure by which tries at a goal are set side by side. */
export interface GoalFigure<G> extends Omit<FigureScale, 'asked'> {
  /** Null where what is asked is no range of this figure. */
  asked(goal: G): AskedRange | null;
  /** Left out, it is the goal's own value. */
  of?(goal: G, run: RunToGrade): number;
  /** What a guide says to a hand that is so much below or above on average. */
  readonly raise: (off: string) => string;
  readonly lower: (off: string) => string;
  /** And to one that differs from try to try; left out, what holds for any move. */
  readonly steady?: string;
}

/**
 * One kind of goal, whole: a file each in this folder, and a line in `goals/index.ts`. `value` is what
 * the try reached, in the goal's own unit: m, m/s, N, s, a share from 0 to 1, or how many.
 */
export interface GoalKind<S extends v.GenericSchema<unknown, { kind: string; weight: number }>> {
  readonly schema: S;
  /** What was to be done, without which nothing is earned; or how, which costs its own weight and no more. */
  readonly role: 'main' | 'side';
  /** Whether one smooth turn of the rod can meet it; else it takes several moves, or the right moment. */
  readonly isOfOneTurn: boolean;
  measure(goal: Unweighted<S>, run: RunToGrade): number;
  /** 0–1; 1 within the limit, and less at once outside it. */
  share(goal: Unweighted<S>, value: number, run: RunToGrade): number;
  /** `met` is the share that it earned on its own: where the value alone does not say what was amiss. */
  words(goal: Unweighted<S>, value: number, units: Units, met: number): GoalWords;
  /**
   * What of it went wrong, a clause after "It stayed on bottom,"; '' where other words say it.
   * Not given, it is what `words` says: "rests: 0, asked 1 of 4 s or longer".
   */
  miss?(goal: Unweighted<S>, value: number, units: Units, result: Result, met: number): string;
  /** A sentence about this goal: what happened, in what was asked; null where `miss` says it. */
  did?(
    goal: Unweighted<S>,
    value: number,
    units: Units,
    result: Result,
    met: number
  ): string | null;
  /** What a picture of the bait can show of it; not given where there is nothing to be seen. */
  drawn?(goal: Unweighted<S>): DrawnGoal;
  /** Not given where tries at it are told apart by their marks alone. */
  readonly figure?: GoalFigure<Unweighted<S>>;
  /**
   * The one thing to change for who missed it; null where it is read from the hand, see fault.ts, or
   * where another goal's miss is why this one was missed.
   */
  advice:
    | ((
        goal: Unweighted<S>,
        value: number,
        result: Result,
        met: number,
        task: AdvisedTask
      ) => string | null)
    | null;
  /** The step of the challenge's own move that is named with it; not given, or null, where the advice is all. */
  step?(goal: Unweighted<S>, value: number, result: Result, met: number): StepPart | null;
}

/** What advice has to know of the task beside its goal. */
export interface AdvisedTask {
  readonly plane: 'lift' | 'sweep';
  /** What may bite in it. */
  readonly fish?: Bite['kind'];
  /** Whether its own move reels, as before a hook set. */
  readonly isReeled: boolean;
}

export type Unweighted<S extends v.GenericSchema> = Omit<v.InferOutput<S>, 'weight'>;

/** Keeps the schema's own type, from which the goal's type is derived. */
export function goalKind<S extends v.GenericSchema<unknown, { kind: string; weight: number }>>(
  kind: GoalKind<S>
): GoalKind<S> {
  return kind;
}

/** Lowest, then highest. */
export function range(most: number) {
  return v.pipe(
    v.tuple([numberIn(0, most), numberIn(0, most)]),
    v.check(([low, high]) => low < high, 'must be lowest, then highest')
  );
}
