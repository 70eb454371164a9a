/** The question that follows one that was explained: the same thing, met in another place. */
export interface Parallel {
  /** Name of an item with options to choose from; see src/lib/course/items. */
  item: string;
  /** Where to look; it never says what is right. */
  hint: string;
}

/**
 * By lesson. A generated item wherever one asks for the same thing: the room then gets figures that
 * nobody has seen before. The others are fixed. No two are twins, as a
 * plan may take any of the lessons.
 */
export const PARALLELS: Readonly<Record<string, Parallel>> = {
  'from-the-boat': {
    item: 'contact-pendulum',
    hint: 'Think of the weight on a string again.'
  },
  'the-clock': {
    item: 'hour-of-most-travel',
    hint: 'Which lift takes the tip straight away from the jig, and which one across?'
  },
  'one-foot': {
    item: 'bait-way-of-slow-drag',
    hint: 'Think of the rope on the floor again. What if some of it lies loose?'
  },
  'your-hands-ruler': {
    item: 'ruler-bias',
    hint: 'Are the ten scattered, or all off to the same side?'
  },
  slack: { item: 'slack-hop', hint: 'What has to happen before a quick lift reaches the jig?' },
  'weight-and-depth': {
    item: 'weight-and-pace',
    hint: 'Which are down in time? Then: which pace does what you want?'
  },
  speed: {
    item: 'pace-limit',
    hint: 'Which are quick enough to lift that jig, and which stay down? Then compare their feet.'
  },
  'feeling-rocks': {
    item: 'speed-rock',
    hint: 'What did the first rock do to a fast jig a minute ago?'
  },
  hops: {
    item: 'fault-of-hops',
    hint: 'Watch the jig’s mark: solid on bottom, open when it’s clear.'
  },
  'stroke-and-fall': {
    item: 'sweep-or-lift',
    hint: 'Two things make height: how fast the rod goes, and how far.'
  },
  'line-and-rod': {
    item: 'line-stretch',
    hint: 'A hop is short. What does the first part of it go into?'
  },
  'reading-bottoms': {
    item: 'bottom-grass',
    hint: 'Does it come on slowly, or all at once? Which of these does that?'
  },
  'bite-or-bottom': {
    item: 'snag-or-fish',
    hint: 'What moves while the rod is still?'
  },
  snags: { item: 'snag-first', hint: 'What did pulling do to the hook a minute ago?' },
  'season-map': {
    item: 'move-or-stay',
    hint: 'Are fish there? Do they bite?'
  },
  'season-and-mood': {
    item: 'season-retrieve',
    hint: 'How far will a fish move at this temperature?'
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
    hint: 'Does a jig keep speeding up as it sinks?'
  },
  'a-morning': {
    item: 'morning-order',
    hint: 'Which mistake costs you the most time here?'
  }
};
