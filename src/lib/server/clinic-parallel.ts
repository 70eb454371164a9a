/** The question that follows one that was explained: the same thing, met in another place. */
export interface Parallel {
  /** Name of an item with options to choose from; see src/lib/course/items. */
  item: string;
  /** Where to look; it never says what is right. */
  hint: string;
}

/**
 * By lesson. A generated item wherever one asks for the same thing: the room then gets figures that
 * nobody has seen before. The others are fixed.
 */
export const PARALLELS: Readonly<Record<string, Parallel>> = {
  'from-the-boat': {
    item: 'contact-pendulum',
    hint: 'Think of the weight on a string again.'
  },
  'the-clock': {
    item: 'hour-of-most-travel',
    hint: 'In which hour does the tip go straight away from the jig, and in which across?'
  },
  'one-foot': {
    item: 'bait-way-of-slow-drag',
    hint: 'Think of the rope on the floor again. Is anything here that a slow pull would mind?'
  },
  'your-hands-ruler': {
    item: 'ruler-bias',
    hint: 'Are the ten apart from each other, or only from the target?'
  },
  slack: { item: 'slack-hop', hint: 'What has to happen before a quick lift reaches the jig?' },
  'weight-and-depth': {
    item: 'weight-and-pace',
    hint: 'Which are down in time? Of those, which pull leaves it lying?'
  },
  speed: {
    item: 'lift-limit',
    hint: 'Two of them may hold. Begin with the most hasty, and ask whether a jig sinks that fast.'
  },
  'feeling-rocks': {
    item: 'pace-limit',
    hint: 'Begin with the most hasty, and ask whether a jig sinks that fast.'
  },
  hops: {
    item: 'fault-of-hops',
    hint: 'Look at the mark of the jig: solid when it lies, open when it is clear.'
  },
  'stroke-and-fall': {
    item: 'stroke-pendulum',
    hint: 'A tight line and a jig that sinks: what did they do together a moment ago?'
  },
  'line-and-rod': {
    item: 'line-stretch',
    hint: 'A hop is short. What is the first part of it spent on?'
  },
  'reading-bottoms': {
    item: 'bottom-slow',
    hint: 'When does the jig meet every small thing on its way?'
  },
  'bite-or-bottom': {
    item: 'snag-or-fish',
    hint: 'What did we say of what swims while the rod is still?'
  },
  snags: { item: 'snag-first', hint: 'What did pulling do to the hook a moment ago?' },
  'season-and-mood': {
    item: 'season-retrieve',
    hint: 'How quick is a fish at this temperature?'
  },
  rigging: {
    item: 'rig-trailer',
    hint: 'It weighs nearly the same. What else is bigger?'
  },
  'hook-set': {
    item: 'set-slack',
    hint: 'What has to happen before a sweep gets to the jig?'
  },
  'first-drop': {
    item: 'drop-watch',
    hint: 'What did the fall just show you, and where?'
  },
  'boat-position': {
    item: 'boat-onto',
    hint: 'Which way does the boat carry the whole rod?'
  },
  offshore: {
    item: 'deep-count',
    hint: 'Does a jig go on speeding up as it sinks?'
  },
  'a-morning': {
    item: 'morning-choice',
    hint: 'Two things are known. One asks for a hand that feels, the other for one with patience.'
  }
};
