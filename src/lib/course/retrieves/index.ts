import type { SeasonRow } from '../season-map';
import { SWUM_UP } from './moves';

/** Water in °C, and fish. */
interface Suits {
  water_C: readonly [number, number];
  fish: 'slow' | 'active' | 'any';
}

/** A way of moving a jig, with the challenge whose reference run shows it and whose beginner fails it. */
export interface Retrieve {
  name: string;
  /** What the eye should go to while it is shown. Quantities in braces, see inUnits. */
  look: string;
  /** What line, tip and hand tell of it on the water, where nobody sees the bait. */
  feel: string;
  /** Where and when it is used: common practice, without a published source. */
  use: string;
  /** The same of a day by the row of the season map that suits it, where that is another. */
  byRow?: Readonly<Record<SeasonRow['id'], string>>;
  /** The same as figures, with what else it is for. Null where it is a skill and not for fish. */
  suits: (Suits & { also?: readonly Suits[] }) | null;
  /** Challenges by their ids, from the plainest on. */
  challenges: readonly string[];
}

/** Over all water; a day's is its season's. */
const ANY_WAIT = '2 to 15 seconds';
const DRAGGED = `{6 in to 3 ft|15 to 90 cm}, rod low and to the side, then wait ${ANY_WAIT}.`;

/** The reel picks up slack; the rod moves the bait. */
export const RETRIEVES: readonly Retrieve[] = [
  {
    name: 'drag',
    look: 'The mark at the jig: it stays solid all the way. The tip moves no faster than the jig.',
    feel: 'A light, steady drag: it’s sliding on bottom. Line that goes slack after you stop: it was up.',
    use: `Under {50 °F|10 °C}, and slow fish in any water. Up to {60 °F|16 °C}, with a short hop. ${DRAGGED}`,
    byRow: {
      cold: `Shorter and slower is better: ${DRAGGED}`,
      cool: `Add a short hop. ${DRAGGED}`,
      mild: `Mix it with hops. ${DRAGGED}`,
      warm: 'Longer and quicker than in cold water: {2 to 3 ft|60 to 90 cm}, then wait 1 to 3 seconds.'
    },
    suits: {
      water_C: [0, 40],
      fish: 'slow',
      also: [
        { water_C: [0, 10], fish: 'any' },
        { water_C: [10, 15.6], fish: 'any' }
      ]
    },
    challenges: ['exactly-one-foot', 'exactly-two-feet', 'exactly-three-feet', 'cold-water']
  },
  {
    name: 'lift and follow down',
    look: 'The fall: the rod goes down as the jig does, so it lands under where it was highest.',
    feel: 'Line just short of tight while the rod goes down. All its weight hanging: it’s off bottom. No weight at all: slack, or a fish.',
    use: 'Water of {50 to 75 °F|10 to 24 °C}. Up {6 to 18 in|15 to 45 cm}, then down on semi-slack line.',
    suits: { water_C: [10, 23.9], fish: 'any' },
    challenges: ['lift-and-follow']
  },
  {
    name: 'hop',
    look: 'How short the lift is, and how quick. At one quick pace, the longer lift hops higher.',
    feel: 'A tick after the hop: it’s back on bottom. No tick: it never left, or it hasn’t landed.',
    use: '{50 °F|10 °C} and up, colder for active fish: one short hop, then a pause.',
    suits: { water_C: [10, 40], fish: 'any', also: [{ water_C: [0, 10], fish: 'active' }] },
    challenges: ['one-hop']
  },
  {
    name: 'three hops',
    look: 'The rings: three hops about the same height, and the pauses between them.',
    feel: 'A tick after each of the three, then a pause. No tick: it hasn’t landed.',
    use: 'Active fish, {60 °F|16 °C} and up. Two to four low hops, then wait 1 to 10 seconds: the warmer, the shorter. Rod up they climb, rod to the side they stay low. Many guides vary the pauses.',
    suits: { water_C: [15.6, 40], fish: 'active' },
    challenges: ['three-hops-even', 'three-hops-uneven', 'three-hops-sideways']
  },
  {
    name: 'stroke',
    look: 'The snap, and then the rod: it comes down with the jig and never holds it up.',
    feel: 'A touch of weight now and then on the way down. All weight: too tight. None at all: too slack.',
    use: 'Warm water, {75 °F|24 °C} and up, and active fish. {2 to 5 ft|60 cm to 1.5 m} up, then a controlled fall.',
    suits: { water_C: [23.9, 40], fish: 'active' },
    challenges: ['stroke', 'fall-on-a-following-rod']
  },
  {
    name: 'swim at a height',
    look: 'How high it runs: that comes from how fast you reel.',
    feel: 'An even pull while you reel, and no bottom. If it touches, reel faster.',
    use: `Active fish off bottom. Steady, ${SWUM_UP} up.`,
    suits: { water_C: [0, 40], fish: 'active' },
    challenges: ['swim-at-a-height']
  },
  {
    name: 'shake on slack',
    look: 'The tip twitches and the jig hardly moves: you only move slack.',
    feel: 'The tip twitches, the line jumps and goes slack again, and no weight comes on.',
    use: 'Fish that follow and won’t eat, any season. The jig trembles in place.',
    suits: { water_C: [0, 40], fish: 'slow' },
    challenges: ['shake-in-place']
  },
  {
    name: 'dead-stick',
    look: 'Nothing, for a long time. The line sits, the pull stays even.',
    feel: 'Nothing for a minute can be right. Any change in the line or the pull: reel down.',
    use: 'Cold water, under {50 °F|10 °C}, and fish that won’t move. 10 to 60 seconds of nothing.',
    suits: { water_C: [0, 10], fish: 'slow' },
    challenges: ['dead-stick']
  },
  {
    name: 'fall and count',
    look: 'The line: it stops running out when the jig is down, and not before. Your count is your depth.',
    feel: 'Nothing in the hand. Watch the line: it stops running out when the jig is down.',
    use: 'Every first cast to a spot. An early stop is a ledge, a fish or a tight line.',
    suits: null,
    challenges: ['count-it-down', 'thirty-feet-down']
  },
  {
    name: 'reel picks up slack',
    look: 'The rod goes back, then the handle turns, and the jig stays put.',
    feel: 'No weight while you reel. Weight right away: there was no slack, and you moved the jig.',
    use: 'After every drag, and once a hop has landed. The reel picks up slack; the rod moves the jig.',
    suits: null,
    challenges: ['reel-takes-slack']
  },
  {
    name: 'snag drill',
    look: 'The line’s angle at the jig, and the slack before each shake.',
    feel: 'It gives a little with each shake: keep going, gently. Nothing gives: change the angle.',
    use: 'Any time you hang up: slack, shake, change the angle. Nobody in line with it.',
    suits: null,
    challenges: ['free-a-snag', 'free-from-above']
  }
];
