import type { Bite, Move, Result, RodAngles, Setup } from '$lib/model';
import type { DrawnGoal, Guess, GuessQuantity, Units, Visibility } from '$lib/scoring';
import type { Snippet } from 'svelte';
import type { RodCamera } from './camera/rod-camera.svelte';
import type { Try } from './live-try';
import type { Plane } from './rod-angles';
import type { TaskStep } from './task-steps';

/** What a water to move a jig in is given. */
export interface PracticeWaterProps {
  setup: Setup;
  plane: Plane;
  start: RodAngles;
  hold_s: number;
  /** A rest of hand and bait shorter than this belongs to the try and does not end it, s. */
  longest_pause_s?: number;
  units: Units;
  visibility?: Visibility;
  /** Counts the tries of a half seen series: every other one, from the second on, is hidden. */
  round?: number;
  /** What came of the tries before, oldest first. */
  ghosts?: readonly Result[];
  target?: DrawnGoal | null;
  /** Whether a try that was out of sight is shown only after a guess at what the bait did, and of what. */
  askGuess?: boolean;
  asks?: GuessQuantity;
  /** Comes before `ontry`, which waits for it. */
  onguess?: (guess: Guess) => void;
  /** A move to be shown on demand. */
  demo?: Move | null;
  /** Hands back true where it was graded and passed. */
  ontry?: (made: Try) => unknown;
  /** What the region is called, where a page has more than one. */
  name?: string;
  /** What is to be said of the last try: stands between the hand and the replay. */
  verdict?: Snippet;
  /** On a page, below each other; or all of it in the height there is, what came of it on top. */
  layout?: 'page' | 'screen';
  /** What the task takes, in order. */
  steps?: readonly TaskStep[];
  /** What may bite, in this try or in another of its task. */
  fish?: Bite['kind'];
  /** What the last try was told to do: in sight beside the rod while it is done. */
  aim?: Snippet;
  /** Where to go on after a try, on a screen: its button stands beside "Try again". */
  onward?: Snippet;
  /** Whether that is the brighter of the two; or, missed in sight, the finger’s scale is shown again. */
  isPassed?: boolean;
  isMissed?: boolean;
  /** Whether the task is to feel: its captions stand at once, and their switch is in sight. */
  isFelt?: boolean;
  /** Water without a task: how the rod is taken is told before each try. */
  isFree?: boolean;
  /** Whether the tip's way is told while it moves, though the jig is hidden: a fix is in feet and seconds. */
  tellsTip?: boolean;
  /** What the button for another try says, where it is not "Try again". */
  again?: string;
  /** Comes before the water is laid out for another try. */
  onagain?: () => void;
  /** Whether it is what a page opens with: its picture and its rod each come in a task of their own. */
  isInTurns?: boolean;
  /** The camera on one's own rod, where it outlasts this water; its owner closes it. */
  camera?: RodCamera;
}
