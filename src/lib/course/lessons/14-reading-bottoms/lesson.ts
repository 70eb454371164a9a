import { ft } from '../../items/draw';
import type { GroundKind } from '../../../model';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

/** The same drag over each kind of bottom. */
const on = (kind: GroundKind, seed = 3, out_ft = 65) =>
  deeperWith({
    bottom: { ground: { kind, seed } },
    start: { bait_x_m: ft(out_ft), slack_m: 0.03 }
  });
const slow = (kind: GroundKind, seed?: number, out_ft?: number) =>
  lowRun(on(kind, seed, out_ft), sweep(60, 90, 6));

export default {
  id: 'reading-bottoms',
  order: 14,
  title: 'Reading bottoms',
  minutes: 10,
  about: 'Drag slow and you can name a bottom unseen. Drag fast and you can’t.',
  place: deepPlace,
  objectives: ['Name a bottom by feel.', 'Drag slowly enough to tell.'],
  leaves_out: ['Which one holds fish.'],
  claims: [
    {
      says: ['The pull keeps growing.'],
      basis: { run: 'mud', sign: 'sucks at the start', unknowns: 'drag' }
    },
    {
      says: ['Mud holds the jig.', 'one long load, it lets go, then it’s even.'],
      basis: { run: 'mud', sign: 'sucks at the start', unknowns: 'drag' }
    },
    {
      says: ['Grass builds up, then lets go.', 'it loads and lets go, again and again.'],
      basis: { run: 'grass', sign: 'springs', unknowns: 'drag' }
    },
    {
      says: 'Drag slow and you can name a bottom unseen.',
      basis: { run: 'rock', sign: 'knocks' }
    },
    { says: 'even all the way, no knocks.', basis: { run: 'sand', sign: 'smooth' } },
    {
      says: 'fine ticks, one after another.',
      basis: { run: 'gravel', sign: 'fine ticks', unknowns: 'drag' }
    },
    {
      says: 'Drag fast and you can’t.',
      basis: { run: 'fast-rock', sign: 'lifted', unknowns: 'drag' }
    },
    {
      says: ['Mud holds until the pull beats it.', 'Mud sucks, but a slow pull beats it.'],
      basis: { run: 'mud', sign: 'sucks at the start', unknowns: 'drag' }
    },
    {
      says: ['Then the rod gives back what it stored.', 'Pull slow and it breaks loose late.'],
      basis: { run: 'question', holds: { travel_m: [0.24, 0.33] } }
    },
    {
      says: ['A jig jumps when you rip it.', 'Guides’ words.', 'Yours may differ.'],
      basis: 'practice'
    }
  ],
  sets_up: [
    'The jig has sunk into mud a little.',
    'Read on the picture what comes up the line, or turn Feel on and hear it.',
    'Someone who knows the lake',
    'Bring it {1 ft|30 cm} in 4 seconds, without making it jump.'
  ],
  proofs: [
    { id: 'fast-rock', run: lowRun(on('chunk rock'), sweep(60, 90, 0.7)) },
    { id: 'rock', run: slow('chunk rock') },
    { id: 'boulders', run: slow('boulders', 3, 40) },
    { id: 'brush', run: slow('brush', 23) },
    { id: 'shells', run: slow('shell bed', 37) }
  ],
  builds_on: ['feeling-rocks'],
  cautions: [drillCautions.snag],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'The jig has sunk into mud a little. You sweep {1 ft|30 cm} of tip, slowly.',
      question: {
        ask: 'How does the jig come out?',
        hint: 'The pull keeps growing. How long can mud hold?',
        run: lowRun(on('mud'), sweep(60, 70, 4)),
        options: [
          {
            id: 'smooth',
            says: 'Late, and nearly all of it',
            holds: { travel_m: [0.24, 0.33] },
            reply:
              'Right. Mud holds until the pull beats it. Then the rod gives back what it stored.'
          },
          {
            id: 'stuck',
            says: 'Hardly at all: it stays put',
            holds: { travel_m: [-0.02, 0.1] },
            reply: 'Mud sucks, but a slow pull beats it.'
          },
          {
            id: 'leap',
            says: 'Late, with a jump twice as far',
            holds: { travel_m: [0.55, 2] },
            reply: 'A jig jumps when you rip it. Pull slow and it breaks loose late.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it, hear it',
      text: 'Read on the picture what comes up the line, or turn Feel on and hear it.',
      isFelt: true,
      demos: [
        { id: 'sand', caption: 'Sand: even all the way, no knocks.', run: slow('sand') },
        { id: 'gravel', caption: 'Gravel: fine ticks, one after another.', run: slow('gravel') },
        { id: 'mud', caption: 'Mud: one long load, it lets go, then it’s even.', run: slow('mud') },
        {
          id: 'grass',
          caption: 'Grass: it loads and lets go, again and again.',
          run: slow('grass')
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['out-of-the-mud', 'over-gravel', 'through-grass', 'what-is-this-bottom']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      text: 'Guides’ words. Yours may differ.',
      cues: [
        {
          sign: 'Dull, heavy, sucks at the start',
          means: 'Mud.',
          basis: { run: 'mud', sign: 'sucks at the start', unknowns: 'drag' }
        },
        { sign: 'Smooth, firm, tacky', means: 'Clay.', basis: 'practice' },
        { sign: 'An even, faint hiss', means: 'Sand.', basis: { run: 'sand', sign: 'smooth' } },
        {
          sign: 'Fine, rapid ticks',
          means: 'Gravel.',
          basis: { run: 'gravel', sign: 'fine ticks', unknowns: 'drag' }
        },
        {
          sign: 'Knocks, climbs, drops, wedges',
          means: 'Chunk rock.',
          basis: { run: 'rock', sign: 'knocks' }
        },
        {
          sign: 'A long load, then a free drop',
          means: 'Boulders.',
          basis: { run: 'boulders', sign: 'long loads', unknowns: 'drag' }
        },
        {
          sign: 'A springy load that slips off',
          means: 'Brush.',
          basis: { run: 'brush', sign: 'springs', unknowns: 'drag' }
        },
        {
          sign: 'Crunch, and small catches',
          means: 'A shell bed.',
          basis: { run: 'shells', sign: 'crunches', unknowns: 'drag' }
        },
        {
          sign: 'A dead stop: you ease into it, nothing gives',
          means: 'A stump.',
          basis: 'practice'
        },
        {
          sign: 'A mushy build-up, a crisp release',
          means: 'Grass.',
          basis: { run: 'grass', sign: 'springs', unknowns: 'drag' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A jig you can lose', 'Someone who knows the lake'],
      steps: [
        'Sit down, nobody casting. Eyes shut, drag, name it.',
        'Check it: the graph tells hard from soft, the map or a local the rest. Ten spots.'
      ],
      log: ['How many you got right', 'Which two you mix up']
    }
  ]
};
