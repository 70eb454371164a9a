import { many, type GoalPlan } from './goal-plans';
import type { Step } from './listener';

/** What the tip of the lessons' rod goes in one degree, in: any try that is seen tells both, again and again. */
export const IN_A_DEG = 1.46;
/** So many degrees for so much of the tip. */
const turning = (tip_in: number) => tip_in / IN_A_DEG;

/** A fall is waited for by the line that runs off the spool. */
const COUNTED: readonly Step[] = [
  { press: 'start', ms: 0 },
  { at: 'down', hear: 'the line stops' },
  { hold: 'down', ms: 1200 }
];

/** A hook set by one switch: the one speed that sets it is no drag, so it has its own button. */
const setsOn = (hear: string, speed: number, before: readonly Step[]): GoalPlan['bySwitch'] => ({
  speed,
  steps: [...before, { at: 'fast', hear }, { hold: 'fast', ms: 1200 }]
});

/**
 * Every challenge of the lessons whose jig is hidden, as a hand meets it that goes by its task, by what tries
 * in sight have told it and by what is told meanwhile.
 */
export const UNSEEN_PLANS: readonly GoalPlan[] = [
  {
    lesson: 'your-hands-ruler',
    challenge: 'two-feet-unseen',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(27) }],
    calls_in: 24
  },
  {
    lesson: 'your-hands-ruler',
    challenge: 'one-foot-unseen',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(14) }],
    calls_in: 12
  },
  {
    lesson: 'from-the-boat',
    challenge: 'count-a-lighter-one',
    speed: 0,
    steps: COUNTED
  },
  {
    lesson: 'weight-and-depth',
    challenge: 'thirty-feet-down',
    speed: 0,
    steps: COUNTED
  },
  {
    lesson: 'feeling-rocks',
    challenge: 'three-stones-unseen',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(44) }],
    calls_in: 42
  },
  {
    lesson: 'reading-bottoms',
    challenge: 'over-gravel',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(40) }],
    calls_in: 36
  },
  {
    lesson: 'reading-bottoms',
    challenge: 'what-is-this-bottom',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(14) }],
    calls_in: 12
  },
  {
    lesson: 'bite-or-bottom',
    challenge: 'strike-a-lost-weight',
    speed: -1,
    steps: [
      { hold: 'up', turn_deg: turning(14) },
      { press: 'faster', times: 5, ms: 300 },
      // The jig's own weight is little at rest: when it goes, what was an even pull is slack.
      { hear: 'even pull' },
      { hear: 'slack, nothing' },
      { hold: 'up', ms: 1200 }
    ],
    bySwitch: setsOn('slack, nothing', -1, [{ hold: 'up', turn_deg: turning(14) }])
  },
  {
    lesson: 'hook-set',
    challenge: 'set-on-fish-not-rock',
    speed: -1,
    steps: [
      { hold: 'up', turn_deg: turning(22) },
      { press: 'faster', times: 5, ms: 300 },
      { hear: 'knock' },
      { hold: 'up', ms: 1200 }
    ],
    bySwitch: setsOn('knock', -1, [{ hold: 'up', turn_deg: turning(22) }])
  },
  {
    lesson: 'first-drop',
    challenge: 'bite-on-semi-slack',
    speed: 0,
    steps: [
      { hold: 'up', turn_deg: 15 },
      { hold: 'down', turn_deg: 7 },
      { press: 'faster', times: 4, ms: 300 },
      // What a fish that moves off tells once the line is tight.
      { hear: 'load builds' },
      { hold: 'up', ms: 1200 }
    ],
    bySwitch: setsOn('load builds', 0, [
      { hold: 'up', turn_deg: 15 },
      { hold: 'down', turn_deg: 7 }
    ])
  },
  {
    lesson: 'offshore',
    challenge: 'offshore-count',
    speed: 0,
    steps: COUNTED
  },
  {
    lesson: 'offshore',
    challenge: 'offshore-foot',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(15) }],
    calls_in: 12
  },
  {
    lesson: 'season-map',
    challenge: 'two-strokes',
    speed: 5,
    steps: [
      { hold: 'up', turn_deg: 60 },
      { hold: 'down', turn_deg: 60 },
      { ms: 1500 },
      { hold: 'reel', reel_in: 24 },
      { hold: 'up', turn_deg: 60 },
      { hold: 'down', turn_deg: 60 }
    ],
    calls_in: 42
  },
  {
    lesson: 'a-morning',
    challenge: 'first-light',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(15) }],
    calls_in: 12
  },
  {
    lesson: 'a-morning',
    challenge: 'wind-comes-up',
    speed: -1,
    steps: [{ hold: 'up', turn_deg: turning(32) }],
    calls_in: 24
  },
  {
    lesson: 'a-morning',
    challenge: 'they-wake',
    speed: 3,
    steps: [...many(2, [{ hold: 'up', ms: 290 }, { ms: 3000 }]), { hold: 'up', ms: 290 }]
  }
];
