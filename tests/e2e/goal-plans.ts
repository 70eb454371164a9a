import type { Step } from './listener';

/** A challenge, and how a hand meets it that goes by its task and by what is told alone. */
export interface GoalPlan {
  readonly lesson: string;
  readonly challenge: string;
  /** How much faster than at first the rod turns, in presses; negative is slower. */
  readonly speed: number;
  readonly steps: readonly Step[];
  /** The same by one switch, where that goes otherwise. */
  readonly bySwitch?: Pick<GoalPlan, 'speed' | 'steps'>;
  /** What is called where the jig was hidden: so far, in. */
  readonly calls_in?: number;
}

export const many = (times: number, steps: readonly Step[]): Step[] =>
  Array.from({ length: times }, () => steps).flat();

/** More than there are speeds, and how many there are below the first. */
const ALL_SPEEDS = 8;
const BELOW_FIRST = 3;

/** Sets the speed of the rod, whatever it was before. */
export const setSpeed = (by: number): Step[] => [
  { press: 'slower', times: ALL_SPEEDS, ms: 0 },
  { press: 'faster', times: BELOW_FIRST + by, ms: 0 }
];

/** Together they hold every kind of goal that any lesson asks; a test says so. */
export const GOAL_PLANS: readonly GoalPlan[] = [
  {
    lesson: 'weight-and-depth',
    challenge: 'light-and-slow',
    speed: -1,
    steps: [{ hold: 'up', tip_in: 24 }]
  },
  {
    lesson: 'slack',
    challenge: 'reel-takes-slack',
    speed: -1,
    steps: [
      { hold: 'up', tip_in: 25 },
      { ms: 500 },
      { hold: 'down', down_to_deg: 60 },
      { hold: 'reel', reel_in: 18 }
    ]
  },
  {
    lesson: 'one-foot',
    challenge: 'contact-over-rocks',
    speed: -1,
    steps: [{ hold: 'up', tip_in: 37 }]
  },
  {
    lesson: 'slack',
    challenge: 'shake-in-place',
    speed: 0,
    steps: many(5, [{ hold: 'up', ms: 450 }, { hold: 'down', ms: 450 }, { ms: 400 }]),
    // Back to where it went up, all else is gone through: that is its rest.
    bySwitch: {
      speed: 0,
      steps: many(5, [
        { hold: 'up', ms: 450 },
        { hold: 'down', ms: 450 }
      ])
    }
  },
  {
    lesson: 'from-the-boat',
    challenge: 'count-it-down',
    speed: 0,
    steps: [
      { press: 'start', ms: 0 },
      { at: 'down', hear: 'On the bottom.' },
      { hold: 'down', ms: 600 }
    ]
  },
  {
    lesson: 'hops',
    challenge: 'one-hop',
    speed: 4,
    steps: [
      { hold: 'up', ms: 380 },
      { hold: 'down', ms: 280 }
    ]
  },
  {
    lesson: 'hops',
    challenge: 'three-hops-even',
    speed: 4,
    steps: [...many(2, [{ hold: 'up', ms: 320 }, { ms: 3000 }]), { hold: 'up', ms: 320 }]
  },
  {
    lesson: 'stroke-and-fall',
    challenge: 'fall-on-a-following-rod',
    speed: 1,
    steps: [
      { press: 'start', ms: 0 },
      { hold: 'down', hear: 'On the bottom.' }
    ]
  },
  {
    lesson: 'bite-or-bottom',
    challenge: 'strike-a-tap',
    speed: -1,
    steps: [
      { hold: 'up', tip_in: 14 },
      { press: 'faster', times: 5, ms: 300 },
      { hear: 'knock' },
      { hold: 'up', ms: 1200 }
    ],
    // The one speed that sets a hook is no drag: it has its own button.
    bySwitch: {
      speed: -1,
      steps: [
        { hold: 'up', tip_in: 14 },
        { at: 'fast', hear: 'knock' },
        { hold: 'fast', ms: 1200 }
      ]
    }
  },
  {
    lesson: 'hook-set',
    challenge: 'reel-down-and-sweep',
    speed: 4,
    steps: [
      { press: 'start', ms: 0 },
      { hear: 'knock' },
      { hold: 'reel', reel_in: 14 },
      { hold: 'up', ms: 1200 }
    ],
    // From the reel to the sweep a switch is long: the reel keeps the line tight from before the bite on.
    bySwitch: {
      speed: 0,
      steps: [
        { press: 'start', ms: 0 },
        { hold: 'reel', isLeftOn: true, ms: 0 },
        { at: 'fast', hear: 'knock' },
        { hold: 'fast', ms: 1200 }
      ]
    }
  },
  {
    lesson: 'snags',
    challenge: 'free-a-snag',
    speed: 3,
    // Less slack than a pull is long: each of the three comes tight.
    steps: [
      { hold: 'up', stuck_in: 6 },
      { ms: 500 },
      { hold: 'down', ms: 1000 },
      { ms: 500 },
      ...many(3, [{ hold: 'up', ms: 600 }, { ms: 500 }, { hold: 'down', ms: 600 }, { ms: 500 }])
    ],
    bySwitch: {
      speed: 3,
      steps: [
        { hold: 'up', stuck_in: 6 },
        { hold: 'down', ms: 1000 },
        ...many(3, [
          { hold: 'up', ms: 600 },
          { hold: 'down', ms: 600 }
        ])
      ]
    }
  },
  {
    lesson: 'season-and-mood',
    challenge: 'swim-at-a-height',
    speed: 4,
    steps: [
      { hold: 'reel', isLeftOn: true, ms: 0 },
      { hold: 'up', ms: 1100 },
      { ms: 6500 },
      { hold: 'reel', ms: 0 }
    ],
    // The rod goes on to where it ends; meanwhile the reel is come to.
    bySwitch: {
      speed: 0,
      steps: [
        { hold: 'fast', isLeftOn: true, ms: 0 },
        { hold: 'reel', ms: 6500 }
      ]
    }
  }
];
