import type { ShownRun } from '../lesson';
import type { MeasureName, SignName } from './measures';
import type { PullFeature } from './pull-features';
import type { Unknowns } from '../../scoring';

/** How an item is met: what is shown with it and what the learner does. */
export type ItemKind = 'mark' | 'order' | 'choose' | 'trace' | 'fault' | 'felt';

/** A run of the model that stands behind an item, and plays beside its answer. */
export interface Case {
  caption: string;
  run: ShownRun;
}

/** A wrong answer that beginners really give: its name, and what to say to whoever gave it. */
export interface BeginnerError {
  id: string;
  reply: string;
}

export interface ItemOption {
  id: string;
  says: string;
  reply: string;
  /** What the option claims, in the measure's SI unit, where it claims a number. */
  value?: number;
}

export interface ChooseAnswer {
  form: 'choose';
  options: ItemOption[];
  key: string;
  /** For numbers: half the width of what the model leaves open, SI. */
  band?: number;
}

export interface OrderAnswer {
  form: 'order';
  /** "most travel first" */
  rule: string;
  things: { id: string; says: string }[];
  key: string[];
  right: string;
  reversed: string;
  other: string;
}

export interface MarkAnswer {
  form: 'mark';
  quantity: 'length' | 'time';
  key: number;
  band: number;
  /** Ends of the ruler. */
  least: number;
  most: number;
  right: string;
  errors: (BeginnerError & { value: number })[];
  other: string;
}

export type Answer = ChooseAnswer | OrderAnswer | MarkAnswer;

/** Of a run, in whatever corner of what is unknown, this measure must lie between these, SI. */
export interface Limit {
  measure: MeasureName;
  unknowns: Unknowns;
  /** From nothing on where it is left out. */
  least?: number;
  most: number;
}

/** What makes the key right, so that anyone can check it again from the cases. */
export type Evidence =
  /** The key's value is the measure of the first case. */
  | { is: 'value'; measure: MeasureName; unknowns: Unknowns }
  /** Options or things stand for the cases in `cases` order by id; the key follows from their measures. */
  | { is: 'rank'; measure: MeasureName; unknowns: Unknowns; ids: string[]; pick?: 'most' | 'least' }
  /** The first case was timed at `known`; the others stand for the options, the key's alone comes to `given`. */
  | {
      is: 'scaled';
      measure: MeasureName;
      unknowns: Unknowns;
      ids: string[];
      known: number;
      given: number;
    }
  /**
   * Each option has a case for each limit, in turn; the key's alone keep within all of them. Where the
   * learner has timed a fall, it is the first case, and all falls are slowed as that one was.
   */
  | { is: 'limits'; limits: Limit[]; ids: string[]; timed_s?: number }
  /** Each option names a sign; of these the first case shows the key's alone. */
  | { is: 'sign'; signs: Record<string, SignName>; unknowns: Unknowns }
  /** Each option names what would be seen in a chart of the pull; of these the first case's shows the key's alone. */
  | { is: 'drawn'; drawn: Record<string, PullFeature> }
  /** The fact that is asked about shows in the cases: the most first by the measure, surely. */
  | {
      is: 'shown';
      measure: MeasureName;
      unknowns: Unknowns;
      /** So many times as much as the second has the first, at least and at most. */
      times?: readonly [number, number];
    }
  /** The fact that is asked about shows in the first case, as this sign. */
  | { is: 'seen'; sign: SignName; unknowns: Unknowns }
  /** Common practice or a caution, which no model decides. */
  | { is: 'practice'; source: string };

export interface Item {
  /** Name of the generator, or of the fixed item: what the review schedules. */
  source: string;
  /** 0 for fixed items. */
  seed: number;
  kind: ItemKind;
  objective: string;
  ask: string;
  answer: Answer;
  /** Said to everyone, after the reply. */
  explain: string;
  evidence: Evidence;
  cases: Case[];
  /** The first case is shown before the answer: as a pull over time, as a retrieve, or to the hand. */
  shows?: 'pull' | 'retrieve' | 'felt';
}

/** What a learner gave: an option's id, ids in order, or a place on the ruler in SI. */
export type Given = string | readonly string[] | number;
