import type { GroundKind } from '../../model';
import type { PullFeature } from './pull-features';

/** A bottom as a hand feels it and as a chart of the pull has it. */
export interface BottomSign {
  kind: GroundKind;
  says: string;
  /** What of it is seen in a chart of the pull. */
  drawn: PullFeature;
  /** A sentence without its end: what it always feels like, and what of it came up the line: after "it". */
  felt: readonly [always: string, now: string];
  /** The same of its chart: what it always draws, and what is drawn now: after "it". */
  pull: readonly [always: string, now: string];
  /** Why it does that. */
  why: string;
}

/** Bottoms that are taken for one another: three that knock, three that catch, three that are even. */
export const LOOK_ALIKES = {
  hard: [
    {
      kind: 'gravel',
      says: 'gravel',
      drawn: 'many ticks',
      felt: ['Gravel ticks fast and light', 'ticked fast and light'],
      pull: ['Gravel draws thin spikes, one after another', 'has thin spikes all the way'],
      why: 'Small stones lie close, so one tick follows the next.'
    },
    {
      kind: 'chunk rock',
      says: 'chunk rock',
      drawn: 'uneven knocks',
      felt: ['Chunk rock knocks hard, at odd times', 'knocked hard, at odd times'],
      pull: ['Chunk rock draws a few tall peaks, unevenly', 'has a few tall peaks at odd gaps'],
      why: 'Chunks lie any which way, so no two knocks are spaced alike.'
    },
    {
      kind: 'boulders',
      says: 'boulders',
      drawn: 'long load, then a drop',
      felt: ['Boulders load the line long, then drop the jig', 'loaded long, then dropped'],
      pull: ['Boulders draw one wide hump, then a drop', 'stays high a long time, then drops'],
      why: 'The jig climbs one side of a big rock and falls off the other.'
    }
  ],
  catchy: [
    {
      kind: 'brush',
      says: 'brush',
      drawn: 'slow loads that slip',
      felt: ['Brush loads like a spring, then slips off', 'loaded like a spring and slipped off'],
      pull: ['Brush draws wide humps', 'has wide humps, each with a drop'],
      why: 'A limb bends until the jig slips off it.'
    },
    {
      kind: 'grass',
      says: 'grass',
      drawn: 'catches of any length',
      felt: ['Grass builds up, then lets go crisp', 'built up and let go, again and again'],
      pull: ['Grass draws spikes and wide humps, mixed', 'mixes spikes and wide humps'],
      why: 'Stems load up on the jig, a few or many, then let go.'
    },
    {
      kind: 'shell bed',
      says: 'a shell bed',
      drawn: 'short hard catches',
      felt: [
        'A shell bed crunches, with hard little catches',
        'crunched, with hard little catches'
      ],
      pull: ['A shell bed draws sharp spikes alone', 'has sharp spikes, none of them wide'],
      why: 'Shell edges catch the jig and let it go at once.'
    }
  ],
  even: [
    {
      kind: 'mud',
      says: 'mud',
      drawn: 'sticks, then goes even',
      felt: ['Mud grabs a jig that rests', 'pulled hardest right at the start'],
      pull: ['Mud draws a peak at the start, then flat', 'peaks at the start, then is flat'],
      why: 'A jig that rests sinks in, and has to be pulled out first.'
    },
    {
      kind: 'sand',
      says: 'sand',
      drawn: 'even from the start',
      felt: ['Sand is even from the first inch', 'was even all the way'],
      pull: ['Sand draws a flat line from the start', 'is flat from the start'],
      why: 'There’s nothing on sand to bump into or sink into.'
    },
    {
      kind: 'gravel',
      says: 'fine gravel',
      drawn: 'many ticks',
      felt: ['Fine gravel ticks, stone by stone', 'ticked, stone by stone'],
      pull: ['Fine gravel draws many thin spikes', 'has many thin spikes'],
      why: 'Each small stone is one tick.'
    }
  ]
} as const satisfies Record<string, readonly BottomSign[]>;

export type Family = keyof typeof LOOK_ALIKES;
