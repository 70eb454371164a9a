import type { GuessQuantity, Challenge } from '../../scoring';

/** A task of a drill before it gets its place in a sitting. */
export type DrillTask = Omit<Challenge, 'id' | 'visibility' | 'phase'>;

/** A skill that is taken through all phases. */
export interface Drill {
  /** Part of its challenges' ids. */
  id: string;
  title: string;
  /** The lesson that teaches it. */
  lesson: string;
  /** What a try is measured by. */
  asks: GuessQuantity;
  /** Tasks that are practised, from the plainest on. */
  practised: readonly Condition[];
  /** Tasks that only come when it is to be seen what was kept. */
  fresh: readonly Condition[];
}

/** Makes the task; runs the model where the reference move needs it. */
export type Condition = () => DrillTask;
