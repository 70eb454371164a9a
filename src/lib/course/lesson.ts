import type * as v from 'valibot';
import type { Move, RodAngles, SetupInput } from '../model';
import type { Challenge } from '../scoring';
import type { Basis } from './basis';
import type { lessonSchema } from './lesson-schema';

type Parsed = v.InferOutput<typeof lessonSchema>;
type ParsedSection = Parsed['sections'][number];

/** A run of the model to be shown. */
export interface ShownRun {
  setup: SetupInput;
  plane: 'lift' | 'sweep';
  start: RodAngles;
  move: Move;
  hold_s: number;
}

type Parts<K extends ParsedSection['kind']> = Extract<ParsedSection, { kind: K }>;

export type PredictSection = Omit<Parts<'predict'>, 'question'> & { question: PredictQuestion };
export type SeeSection = Omit<Parts<'see'>, 'demos'> & { demos: Demo[] };
export type TrySection = Parts<'try'>;
export type FeelSection = Parts<'feel'>;
export type FieldSection = Parts<'field'>;
type WeightsSection = Parts<'weights'>;
export type Section =
  PredictSection | SeeSection | TrySection | FeelSection | WeightsSection | FieldSection;

export type Option = Parts<'predict'>['question']['options'][number];

/** A question whose key is what the model's run says, or common practice. */
export interface PredictQuestion {
  ask: string;
  /** Id of the right option where no run decides it. */
  practice?: string;
  hint?: string;
  /** A number is said in these units instead of an option being chosen. */
  say?: 'feet' | 'inches' | 'seconds';
  run: ShownRun;
  /** A fall that the learner has counted, s: the one that is asked is told by it. */
  timed?: { run: ShownRun; fall_s: number };
  options: Option[];
}

export interface Demo {
  id: string;
  caption: string;
  run: ShownRun;
}

/** One sentence, or a part of one, and what it rests on. */
export interface Claim {
  says: string;
  basis: Basis;
}

/** A lesson with its challenges. Its fields are documented in lesson-schema.ts. */
export interface Lesson extends Omit<Parsed, 'sections' | 'proofs'> {
  sections: Section[];
  proofs?: { id: string; run: ShownRun }[];
  challenges: Challenge[];
}

/** A lesson as its page is told of it. */
export interface ToldLesson {
  lesson: Lesson;
  /** The one after it, by its number and title; null after the last. */
  next: (Pick<Lesson, 'id'> & { name: string }) | null;
}

/** What a lesson's folder gives: nothing in it is trusted before parseLesson. */
export interface LessonFolder {
  /** "01-one-foot" */
  folder: string;
  lesson: unknown;
  challenges: readonly unknown[];
}
