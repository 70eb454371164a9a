import { ft } from '../../items/draw';
import { inTurn, reel, sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const FAR = ft(45);
const withSlack = (slack_m: number) => deeperWith({ start: { bait_x_m: FAR, slack_m } });
const tightMono = deeperWith({
  line: { material: 'nylon', diameter_m: 0.00032 },
  start: { bait_x_m: ft(60), slack_m: 0.03 }
});
/** Three feet of tip in little more than half a second. */
const hard = sweep(60, 87.5, 0.6);
const rocks = deeperWith({
  bottom: { friction: 0.4, ground: { kind: 'chunk rock', seed: 3 } },
  start: { bait_x_m: FAR, slack_m: 0.03 }
});

export default {
  id: 'hook-set',
  order: 16,
  title: 'The hook set',
  minutes: 6,
  about: 'Reel down until you feel it, then sweep, low and firm.',
  place: deepPlace,
  objectives: [
    'Reel down, then sweep, in time.',
    'Know when to set, when to reel first, and when not to.'
  ],
  leaves_out: ['Big fish, and how tight to set your drag.'],
  claims: [
    {
      says: 'Reeled down, the same sweep gets there.',
      basis: { most: 'travel_m', of: ['reeled', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'On a tight line some guides sweep at the tap, some reel down first. Both work. Some set up and hard.',
      basis: 'practice'
    },
    {
      says: 'Tight line passes nearly all on, near or far.',
      basis: { run: 'question', holds: { travel_m: [0.8, 1.05] } }
    },
    {
      says: ['A free jig pulls back less than half a pound.', 'A free jig doesn’t pull that hard.'],
      basis: { run: 'question', holds: { pull_N: [0, 2.22] } }
    },
    {
      says: ['A fish stretches mono:', 'sweep longer.', 'On a fish, yes.'],
      basis: 'practice'
    }
  ],
  sets_up: [
    'When the fish taps, reel down, then sweep, so the jig comes {2 ft|60 cm}.',
    'Reel down until you feel it, then sweep, low and firm.'
  ],
  builds_on: ['bite-or-bottom', 'slack'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'A free jig {60 ft|18 m} out, 12-lb mono, line tight. You sweep {3 ft|90 cm} of tip, hard.',
      question: {
        ask: 'How much of your sweep gets to the jig?',
        hint: 'How hard does a free jig pull back?',
        run: lowRun(tightMono, hard),
        options: [
          {
            id: 'all',
            says: 'Nearly all of it',
            holds: { travel_m: [0.8, 1.05] },
            reply:
              'Right. A free jig pulls back less than half a pound. A fish stretches mono: sweep longer.'
          },
          {
            id: 'half',
            says: 'About half: mono stretches',
            holds: { travel_m: [0.3, 0.6] },
            reply: 'On a fish, yes. A free jig doesn’t pull that hard.'
          },
          {
            id: 'none',
            says: 'Next to nothing, that far out',
            holds: { travel_m: [-0.1, 0.2] },
            reply: 'Tight line passes nearly all on, near or far.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'slack', caption: 'Slack in the line.', run: lowRun(withSlack(0.6), hard) },
        {
          id: 'reeled',
          caption: 'Reeled down, the same sweep gets there.',
          run: lowRun(withSlack(0.6), inTurn(sweep(60, 60, 0.1), reel(0.5, 1), hard))
        },
        { id: 'tight', caption: 'Tight all along.', run: lowRun(tightMono, hard) },
        { id: 'rock', caption: 'A rock: don’t set.', run: lowRun(rocks, sweep(60, 90, 6)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['reel-down-and-sweep', 'set-on-fish-not-rock']
    },
    {
      kind: 'feel',
      title: 'Set or don’t',
      text: 'On a tight line some guides sweep at the tap, some reel down first. Both work. Some set up and hard.',
      cues: [
        {
          sign: 'Line jumps, slack in it',
          means: 'Reel down first.',
          basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
        },
        {
          sign: 'Knocks while you drag',
          means: 'Rock: it stops when the rod does.',
          basis: { run: 'rock', sign: 'knocks' }
        },
        {
          sign: 'Hooked up',
          means: 'Rod low, steady pull. Net it, then pliers. Never swing a fish at anyone.',
          basis: 'practice'
        },
        {
          sign: 'Someone in line with your rod',
          means: 'Don’t set. A jig that pulls free comes fast.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: [
        'Your rod, no hook',
        'A spring scale on a post, a phone filming it',
        'Glasses for everyone'
      ],
      steps: [
        'Everyone off to the side, nobody in line with the post.',
        'Line tied to the scale, {40 ft|12 m} off, tight. Sweep firm, not hard.',
        '{2 ft|60 cm} of slack: sweep.',
        'Same slack: reel down, then sweep.'
      ],
      log: ['Three readings']
    }
  ]
};
