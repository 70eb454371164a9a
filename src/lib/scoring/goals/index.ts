import type * as v from 'valibot';
import type { Result } from '../../model';
import type { Units } from '../display';
import { PASS_MARK, TOTAL_MARKS } from '../pass-mark';
import type { RunToGrade } from '../run-to-grade';
import { reeledFirst, type ReeledFirst } from './bait-measures';
import { bottomFirst } from './bottom-first';
import { cameTight } from './came-tight';
import { contact } from './contact';
import { dragFirst } from './drag-first';
import { follow } from './follow';
import { freed } from './freed';
import {
  FIGURE_UNITS,
  type AdvisedTask,
  type AskedRange,
  type DrawnGoal,
  type FigureScale,
  type FigureUnit,
  type GoalFigure,
  type GoalKind,
  type GoalWords,
  type StepPart
} from './goal-kind';
import { hops, isHop } from './hops';
import { lowered } from './lowered';
import { pace } from './pace';
import { peakHeight } from './peak-height';
import { DRAGGED_M, reeled } from './reeled';
import { rests } from './rests';
import { rhythm } from './rhythm';
import { speed } from './speed';
import { stayed } from './stayed';
import { stones } from './stones';
import { strike } from './strike';
import { swim } from './swim';
import { swing } from './swing';
import { tight } from './tight';
import { tipSpeed } from './tip-speed';
import { travel } from './travel';
import { twitches } from './twitches';

/** Every kind of goal there is, by its name in a challenge. */
const KINDS = {
  bottom_first: bottomFirst,
  came_tight: cameTight,
  contact,
  drag_first: dragFirst,
  follow,
  freed,
  hops,
  lowered,
  pace,
  peak_height: peakHeight,
  reeled,
  rests,
  rhythm,
  speed,
  stayed,
  stones,
  strike,
  swim,
  swing,
  tight,
  tip_speed: tipSpeed,
  travel,
  twitches
} as const;

type Kinds = typeof KINDS;
export type GoalKindName = keyof Kinds;

/** What a try is graded for, with how many of the 100 marks it carries. SI units. */
export type WeightedGoal = {
  [K in GoalKindName]: v.InferOutput<Kinds[K]['schema']>;
}[GoalKindName];

/** The same without its weight. */
export type Goal = WithoutWeight<WeightedGoal>;
type WithoutWeight<G> = G extends unknown ? Omit<G, 'weight'> : never;

/** For `v.variant('kind', …)`. */
export const goalSchemas = Object.values(KINDS).map(({ schema }) => schema) as [
  Kinds[GoalKindName]['schema'],
  ...Kinds[GoalKindName]['schema'][]
];

/** Each kind is typed by its own goal; what joins them is the table's key. */
type AnyKind = Omit<GoalKind<v.GenericSchema<unknown, WeightedGoal>>, 'schema'>;
function kindOf({ kind }: Goal): AnyKind {
  return KINDS[kind] as unknown as AnyKind;
}

/** What the try reached, in the goal's own unit: m, share 0–1, m/s, s, N, or how many. */
export function valueOf(goal: Goal, run: RunToGrade): number {
  return kindOf(goal).measure(goal, run);
}

/** How well the goal was met on its own, 0–1: 1 inside its limit. */
export function shareOf(goal: Goal, run: RunToGrade): number {
  const kind = kindOf(goal);
  return kind.share(goal, kind.measure(goal, run), run);
}

/** Whether it is what was to be done, and not how. */
export function isMain(goal: Goal): boolean {
  return kindOf(goal).role === 'main';
}

export function isOfOneTurn(goal: Goal): boolean {
  return kindOf(goal).isOfOneTurn;
}

/** A goal's name, what it asks and what was reached of it. */
export function wordsOf(goal: Goal, value: number, units: Units, met = 1): GoalWords {
  return kindOf(goal).words(goal, value, units, met);
}

/** A goal, what was reached of it, and how well that meets it, 0–1. */
interface MetGoal {
  readonly goal: Goal;
  readonly value: number;
  readonly met: number;
}

/** What went wrong of a goal that was missed, as a clause; may be empty. */
export function missOf({ goal, value, met }: MetGoal, units: Units, result: Result): string {
  const kind = kindOf(goal);
  if (kind.miss) return kind.miss(goal, value, units, result, met);
  const { name, asked, reached } = kind.words(goal, value, units, met);
  return `${name.toLowerCase()}: ${reached}, asked ${asked}`;
}

/** What happened, in what the goal asks; null where it has no such sentence. */
export function didOf({ goal, value, met }: MetGoal, units: Units, result: Result): string | null {
  return kindOf(goal).did?.(goal, value, units, result, met) ?? null;
}

/** The one thing to change for who missed it, or null where it is read from the hand (fault.ts). */
export function adviceOf(
  { goal, value, met }: MetGoal,
  result: Result,
  task: AdvisedTask
): string | null {
  return kindOf(goal).advice?.(goal, value, result, met, task) ?? null;
}

/** The step of the move that this advice is about. */
export function adviceStepOf({ goal, value, met }: MetGoal, result: Result): StepPart | null {
  return kindOf(goal).step?.(goal, value, result, met) ?? null;
}

/** Whether what to change is read from the hand, and not said by the goal itself. */
export function isReadFromHand(goal: Goal): boolean {
  return kindOf(goal).advice === null;
}

/** What a picture of the bait can show of these goals together; of two alike, the first. */
export function drawnOf(goals: readonly Goal[]): DrawnGoal {
  return goals.reduceRight<DrawnGoal>(
    (all, goal) => ({ ...all, ...kindOf(goal).drawn?.(goal) }),
    {}
  );
}

/** The figure of a task's tries, with what was asked of it and what a guide says. */
export interface TaskFigure
  extends FigureScale, Pick<GoalFigure<never>, 'raise' | 'lower' | 'steady'> {
  /** The goal that it is of; null where only the marks tell tries apart. */
  readonly goal: WeightedGoal | null;
}

/** Goals whose marks differ by no more are asked alike: three of a hundred are 34, 33 and 33. */
const ALIKE_MARKS = 1;

/**
 * The one figure by which tries at a task are shown, wherever they are: of the goal that carries most
 * marks and has one, a distance first among those that carry alike.
 */
export function figureOf({ goals }: { goals: readonly WeightedGoal[] }): TaskFigure {
  const having = goals.filter((goal) => kindOf(goal).figure);
  const most = Math.max(...having.map(({ weight }) => weight));
  const alike = having.filter(({ weight }) => weight >= most - ALIKE_MARKS);
  const goal = alike.find(({ kind }) => kind === 'travel') ?? alike[0];
  const figure = goal && kindOf(goal).figure;
  if (!figure) return { goal: null, ...MARKS_FIGURE };
  const { unit, name, less, more, raise, lower, steady } = figure;
  return { goal, unit, name, less, more, raise, lower, steady, asked: figure.asked(goal) };
}

const MARKS_FIGURE: Omit<TaskFigure, 'goal'> = {
  unit: 'marks',
  name: 'Marks of 100',
  less: 'not passed',
  more: 'over',
  asked: [PASS_MARK, TOTAL_MARKS],
  raise: () => 'Show what a try did, and let them say what to change.',
  lower: () => ''
};

/** The same as plain data, for whoever shows it elsewhere. */
export function figureScale(challenge: { goals: readonly WeightedGoal[] }): FigureScale {
  const { unit, name, less, more, asked } = figureOf(challenge);
  return { unit, name, less, more, asked };
}

/** What a try reached of its task's figure; null where there is nothing to set on an axis, as of a rod that never moved. */
export function figureIn(figure: TaskFigure, run: RunToGrade, marks: number): number | null {
  const { goal } = figure;
  if (!goal) return marks;
  const { figure: own, measure } = kindOf(goal);
  const value = own?.of ? own.of(goal, run) : measure(goal, run);
  return Number.isFinite(value) ? value : null;
}

export type TravelGoal = Extract<Goal, { kind: 'travel' }>;

export function travelGoalOf({ goals }: { goals: readonly Goal[] }): TravelGoal | undefined {
  return goals.find((goal) => goal.kind === 'travel');
}

export { DRAGGED_M, FIGURE_UNITS, isHop, reeledFirst };
export type {
  AdvisedTask,
  AskedRange,
  DrawnGoal,
  FigureScale,
  FigureUnit,
  GoalWords,
  ReeledFirst,
  StepPart
};
