/** A way of moving a jig, with the challenge whose reference run shows it and whose beginner fails it. */
export interface Retrieve {
  name: string;
  /** What the eye should go to while it is shown. Quantities in braces, see inUnits. */
  look: string;
  /** What line, tip and hand tell of it on the water, where nobody sees the bait. */
  feel: string;
  /** Where and when it is used: common practice, without a published source. */
  use: string;
  /** The same as figures: water in °C, and fish it is for. Null where it is a skill and not for fish. */
  suits: { water_C: readonly [number, number]; fish: 'slow' | 'active' | 'any' } | null;
  /** Challenges by their ids, from the plainest on. */
  challenges: readonly string[];
}

/** The reel recovers slack; the rod moves the bait. */
export const RETRIEVES: readonly Retrieve[] = [
  {
    name: 'drag',
    look: 'The mark at the bait: it stays solid all the way. The tip moves no faster than the jig.',
    feel: 'A steady, light drag: it is sliding on the bottom. A line that falls slack after the stop: it was lifted.',
    use: 'From cold to warm, and whenever fish are slow: {length:0.15} to {length:0.91} with the rod low and to the side, then a rest of 2 to 15 seconds.',
    suits: { water_C: [0, 40], fish: 'slow' },
    challenges: ['exactly-one-foot', 'exactly-two-feet', 'exactly-three-feet']
  },
  {
    name: 'lift and follow down',
    look: 'The fall: the rod goes down as the jig does, so that it lands below where it was highest.',
    feel: 'The line keeps just short of tight while the rod goes down. The tip springs up without weight: the jig is off the bottom already.',
    use: 'Water of {temperature:10} to {temperature:23.9}: the jig rises {length:0.15} to {length:0.45} and falls on a line just short of tight.',
    suits: { water_C: [10, 23.9], fish: 'any' },
    challenges: ['lift-and-follow']
  },
  {
    name: 'hop',
    look: 'How short the lift is, and how quick. Height comes from pace, not from reach.',
    feel: 'A tick after the hop: it is back on the bottom. No tick: it did not leave, or it has not landed.',
    use: 'Water of {temperature:10} and more: one short hop, then a rest.',
    suits: { water_C: [10, 40], fish: 'any' },
    challenges: ['one-hop']
  },
  {
    name: 'three hops',
    look: 'The open marks: three, alike in height, and the rests between them.',
    feel: 'A tick after each of the three, and the same rest before the next. No tick: it has not landed.',
    use: 'Fish that are awake, {temperature:15.6} and more: two to four hops of {length:0.08} to {length:0.15}, then 3 to 10 seconds of rest. Upright they climb, to the side they stay low; uneven rests look less like a machine.',
    suits: { water_C: [15.6, 40], fish: 'active' },
    challenges: [
      'three-hops-even',
      'three-hops-uneven',
      'three-hops-sideways',
      'three-hops-sideways-uneven'
    ]
  },
  {
    name: 'stroke',
    look: 'The snap, and then the rod: it comes down with the jig and never holds it.',
    feel: 'A touch of weight now and then on the way down. Weight all the way: too tight. Nothing at all: too slack.',
    use: 'Warm water, over {temperature:23.9}, and active fish: {length:0.61} to {length:1.52} up, then a fall under control.',
    suits: { water_C: [23.9, 40], fish: 'active' },
    challenges: ['stroke', 'fall-on-a-following-rod']
  },
  {
    name: 'swim at a height',
    look: 'The height over the bottom: it comes from the pace of the reel alone.',
    feel: 'An even pull while the reel turns, and no touch of the bottom. A touch: faster.',
    use: 'Active fish off the bottom: steady, {length:0.15} to {length:0.61} up.',
    suits: { water_C: [0, 40], fish: 'active' },
    challenges: ['swim-at-a-height']
  },
  {
    name: 'shake on slack',
    look: 'The tip twitches and the jig nearly stays: only slack is moved.',
    feel: 'The tip twitches, the line jumps and falls slack again, and no weight comes on.',
    use: 'Fish that look and do not take, in any season: the jig trembles in its place.',
    suits: { water_C: [0, 40], fish: 'slow' },
    challenges: ['shake-in-place']
  },
  {
    name: 'dead-stick',
    look: 'Nothing, for long. The line lies, the pull stays even.',
    feel: 'Nothing for a minute: that may be right. The line lies, the pull stays even.',
    use: 'Cold water, under {temperature:10}, and fish that will not move: 10 to 60 seconds of nothing.',
    suits: { water_C: [0, 10], fish: 'slow' },
    challenges: ['cold-water', 'dead-stick']
  },
  {
    name: 'fall and count',
    look: 'The line: it goes slack when the jig is down, and not before. The count is the depth.',
    feel: 'The line: it goes slack when the jig is down, and not before.',
    use: 'Every first cast in a place. A count that ends early is a ledge, a fish or a tight line.',
    suits: null,
    challenges: ['count-it-down', 'thirty-feet-down']
  },
  {
    name: 'reel recovers slack',
    look: 'The rod goes back, then the reel turns, and the jig does not move.',
    feel: 'No weight while the reel turns. Weight at once: there was no slack, and the reel moves the jig.',
    use: 'After every move of the rod. The reel recovers slack; the rod moves the bait.',
    suits: null,
    challenges: ['reel-takes-slack']
  },
  {
    name: 'snag drill',
    look: 'The angle of the line at the jig, and the slack before each shake.',
    feel: 'It gives a little with each shake: go on, gently. Nothing gives: change the angle.',
    use: 'Whenever the jig hangs: slacken, shake, change the angle. Never pull it towards anyone.',
    suits: null,
    challenges: ['free-a-snag', 'free-from-above']
  }
];
