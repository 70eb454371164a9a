import { parseSetup, TICK_S } from '../../src/lib/model';
import { gradeRun, type Challenge, type Grade } from '../../src/lib/scoring';
import { SET_HOOK_M_S } from '../../src/lib/scoring/key-speeds';
import { Hand } from '../../src/lib/sandbox/hand';
import { LiveTry, type Try } from '../../src/lib/sandbox/live-try';
import { NextStep } from '../../src/lib/sandbox/next-step.svelte';
import { movedAngle, ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { buttonPaces } from '../../src/lib/sandbox/button-pace';
import { reelPace, taskStepsOf } from '../../src/lib/sandbox/task-steps';

/** The screen is drawn so often, ms; and the model runs so far behind the clock. */
const FRAME_MS = 16;
const BEHIND_MS = 25;
const TICK_MS = 1000 * TICK_S;
/** From one button to the other a finger takes so long, ms. A design value. */
const OTHER_BUTTON_MS = 150;
/** A fish is felt, and a hand begins to answer, so long after it bites, ms. */
const FELT_MS = 400;
/** Nobody watches the lights for longer, ms. */
const LONGEST_MS = 60_000;

type Light = NextStep['now'];

export interface Lit {
  readonly made: Try;
  readonly grade: Grade;
  /** What was pressed, and for how long, s. */
  readonly pressed: readonly string[];
}

/** Once a jig is down that nothing took, the rod is lowered after so long, for so long, and the try ended; s. */
const BLANK_S = { from: 1, to: 2, done: 2.5 };

/** Who counts a fall out of sight lowers the rod so long after it is over, s. A design value. */
const COUNTED_LATE_S = 1;

/** One who presses what is lit and lets go so long after the light has moved on. */
class Follower {
  held: Light = null;
  readonly pressed: string[] = [];
  private since_ms = 0;
  private acts_ms: number | null = null;

  constructor(
    private readonly reaction_ms: number,
    /** So long after a light the reel is let go, ms. */
    private readonly reelReaction_ms: number,
    /** How long a button is held of which no light tells when to let go, ms; null where one does. */
    private readonly counted: (light: Light) => number | null,
    private readonly act: (light: Light, now_ms: number, isDown: boolean) => void
  ) {}

  /** At a frame, with this button lit. */
  look(now_ms: number, lit: Light): void {
    if (this.held !== null) {
      if (lit !== this.held)
        this.acts_ms ??= now_ms + (this.held === 'in' ? this.reelReaction_ms : this.reaction_ms);
      if (this.acts_ms !== null && now_ms >= this.acts_ms) this.letGo(this.acts_ms);
      return;
    }
    if (lit === null) {
      this.acts_ms = null;
      return;
    }
    this.acts_ms ??= now_ms + this.reaction_ms;
    if (now_ms >= this.acts_ms) this.press(lit, this.acts_ms);
  }

  private press(lit: Light, now_ms: number): void {
    this.act(lit, now_ms, true);
    this.acts_ms = null;
    if (lit === 'start' || lit === 'done') return;
    this.held = lit;
    this.since_ms = now_ms;
    const counted_ms = this.counted(lit);
    if (counted_ms !== null) this.acts_ms = now_ms + counted_ms;
  }

  private letGo(now_ms: number): void {
    this.act(this.held, now_ms, false);
    this.pressed.push(`${this.held} ${((now_ms - this.since_ms) / 1000).toFixed(2)}`);
    this.held = null;
    this.acts_ms = now_ms + OTHER_BUTTON_MS;
  }
}

/**
 * A try by a person with the buttons, who does what the lights say; so late after each, s.
 * @param reelReaction_s how late the reel is let go, where otherwise than the rod
 * @param counted_s how long the last drag is held of a jig out of sight, s; null in sight, where a light tells it
 */
export function byLights(
  challenge: Challenge,
  reaction_s: number,
  counted_s: number | null = null,
  reelReaction_s = reaction_s
): Lit {
  const { plane, start, hold_s, longest_pause_s = 0 } = challenge;
  const setup = parseSetup(challenge.setup);
  const steps = taskStepsOf(challenge);
  const task = { setup, plane, start, hold_s, longest_pause_s, steps };
  const paces = buttonPaces(steps, setup.rod.length_m);
  const key_m_s = paces.m_s[paces.first];
  const hand = new Hand(start[movedAngle(plane)], ROD_LIMITS[plane]);
  hand.keySpeed_deg_s = ((key_m_s / setup.rod.length_m) * 180) / Math.PI;
  const live = new LiveTry(setup, plane, start, hand, longest_pause_s);
  live.reel.pace_m_s = reelPace(steps);
  const next = new NextStep();
  next.begin(task, hand.angle_deg);
  const turn = (now_ms: number, direction: number, faster = 1) => {
    const { stop_deg, times } = next.pressOf(direction, hand.wanted_deg);
    hand.turn(now_ms, direction * faster * times, stop_deg);
  };
  let isDone = false;
  const act = (light: Light, now_ms: number, isDown: boolean) => {
    const on = isDown ? 1 : 0;
    if (light === 'start') live.begin();
    else if (light === 'done') isDone = true;
    else if (light === 'up') turn(now_ms, on);
    else if (light === 'down') turn(now_ms, -on);
    else if (light === 'snap') turn(now_ms, on, SET_HOOK_M_S / key_m_s);
    else if (light !== null) live.reel.turn(now_ms, light === 'in' ? on : -on);
  };
  const drags = steps.filter(({ does, isStroke }) => does === 'up' && !isStroke).length;
  let dragged = 0;
  const counted = (light: Light) => {
    if (light === 'up') dragged += 1;
    const isLast = light === 'up' && dragged === drags && steps.at(-1)?.does === 'up';
    return counted_s !== null && isLast ? 1000 * counted_s : null;
  };
  const follower = new Follower(1000 * reaction_s, 1000 * reelReaction_s, counted, act);
  let ticked_ms = 0;
  for (let now_ms = 500; now_ms < LONGEST_MS && !isDone; now_ms += FRAME_MS) {
    while (ticked_ms + TICK_MS <= now_ms - BEHIND_MS) live.tick((ticked_ms += TICK_MS));
    if (live.stage === 'still') break;
    if (live.stage === 'moving') next.look(live, now_ms, counted_s !== null);
    follower.look(now_ms, litOrFelt(next, live, challenge, counted_s !== null));
  }
  const made = live.finish(hold_s);
  const { move, result } = made.run;
  return { made, grade: gradeRun(challenge, { move, result }), pressed: follower.pressed };
}

/** What no light tells, a fish does, or that none came, or one's own count of a fall out of sight. */
function litOrFelt(
  { now, coming }: NextStep,
  live: LiveTry,
  challenge: Challenge,
  isHidden: boolean
): Light {
  if (now !== null || coming === null) return now;
  const { t_s } = live.now;
  const [bite] = challenge.setup.bites ?? [];
  if (bite) return 1000 * (t_s - bite.t_s) >= FELT_MS ? coming : null;
  const down = live.events.find(({ kind }) => kind === 'bottom');
  if (!down) return null;
  const since_s = t_s - down.t_s;
  if (isHidden && challenge.setup.start.spool === 'free' && !challenge.if_bitten)
    return since_s >= COUNTED_LATE_S ? coming : null;
  if (!challenge.if_bitten || !challenge.if_blank) return null;
  if (since_s >= BLANK_S.done) return 'done';
  return since_s >= BLANK_S.from && since_s < BLANK_S.to ? 'down' : null;
}
