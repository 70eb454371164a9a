/** A way of moving a jig, with the challenge whose reference run shows it and whose beginner fails it. */
export interface Retrieve {
  name: string;
  /** Challenges by their ids, from the plainest on. */
  challenges: readonly string[];
}

/** The reel recovers slack; the rod moves the bait. */
export const RETRIEVES: readonly Retrieve[] = [
  { name: 'drag', challenges: ['exactly-one-foot', 'exactly-two-feet', 'exactly-three-feet'] },
  { name: 'lift and follow down', challenges: ['lift-and-follow'] },
  { name: 'hop', challenges: ['one-hop'] },
  {
    name: 'three hops',
    challenges: ['three-hops-even', 'three-hops-uneven', 'three-hops-sideways']
  },
  { name: 'stroke', challenges: ['stroke', 'fall-on-a-following-rod'] },
  { name: 'swim at a height', challenges: ['swim-at-a-height'] },
  { name: 'shake on slack', challenges: ['shake-in-place'] },
  { name: 'dead-stick', challenges: ['cold-water', 'dead-stick'] },
  { name: 'fall and count', challenges: ['count-it-down', 'thirty-feet-down'] },
  { name: 'reel recovers slack', challenges: ['reel-takes-slack'] },
  { name: 'snag drill', challenges: ['free-a-snag'] }
];
