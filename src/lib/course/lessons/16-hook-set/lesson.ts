import { ft } from '../../items/draw';
import { inTurn, reel, sweep } from '../../retrieves/moves';
import { deeper, deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const FAR = ft(45);
const tightMono = deeperWith({
  line: { material: 'nylon', diameter_m: 0.00032 },
  start: { bait_x_m: ft(60), slack_m: 0.03 }
});
/** Three feet of tip in little more than half a second. */
const hard = sweep(60, 87.5, 0.6);
/** It hangs by its own weight: about a foot and a half more than straight. */
const bowed = { ...deeper, start: { bait_x_m: FAR, horizontal_tension_N: 0.0065 } };
const slackSweep = lowRun(bowed, hard);
const rocks = deeperWith({
  bottom: { friction: 0.4, ground: { kind: 'chunk rock', seed: 3 } },
  start: { bait_x_m: FAR, slack_m: 0.03 }
});

export default {
  id: 'hook-set',
  order: 16,
  title: 'The hook set',
  minutes: 7,
  about: 'Reel down until you feel it, then sweep, low and firm.',
  place: deepPlace,
  objectives: [
    'Reel down, then sweep, in time.',
    'Know when to set, when to reel first, and when not to.'
  ],
  leaves_out: ['Big fish, and how tight to set your reel drag.'],
  claims: [
    {
      says: 'Reeled down, the same sweep gets there.',
      basis: { most: 'travel_m', of: ['reeled', 'slack'], unknowns: 'drag' }
    },
    {
      says: [
        'On a tight line some guides sweep at the tap, some reel down first. Both work. Some swing straight up, and hard.',
        'it stops when the rod does.',
        'a knot that slips comes back at you.',
        'Only the jig is on the line: how hard the hook goes in, a scale tells you.'
      ],
      basis: 'practice'
    },
    {
      says: ['On a tight line, yes.', 'nearly all of it does.'],
      basis: { run: 'tight', holds: { travel_m: [0.8, 1.05] } }
    },
    {
      says: [
        'Slack comes out of your sweep first.',
        'The slack cost you about {a foot|30 cm}:',
        'on a hard sweep the belly pulls before it’s straight.',
        'Slack eats some of it, not all: once it’s out, the jig comes.',
        'two thirds of your sweep gets to the jig.'
      ],
      basis: { run: 'question', holds: { travel_m: [0.5, 0.78] } }
    }
  ],
  sets_up: [
    'When the fish taps, reel down until you feel the jig, then sweep firmly.',
    'The tap: rod still, and “a knock” on the picture.',
    'Graded: in time, slack gone, then a firm sweep.',
    'Reel down until you feel it, then sweep, low and firm.'
  ],
  builds_on: ['bite-or-bottom', 'slack'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Jig {45 ft|14 m} out, {18 in|45 cm} of slack in the line. You sweep {3 ft|90 cm} of tip, hard.',
      question: {
        ask: 'How much of your sweep gets to the jig?',
        hint: 'What does your sweep take up first?',
        run: slackSweep,
        options: [
          {
            id: 'all',
            says: 'Nearly all of it',
            holds: { travel_m: [0.8, 1.05] },
            reply: 'On a tight line, yes. Slack comes out of your sweep first.'
          },
          {
            id: 'half',
            says: 'About two thirds of it',
            holds: { travel_m: [0.5, 0.78] },
            reply:
              'Right. The slack cost you about {a foot|30 cm}: on a hard sweep the belly pulls before it’s straight. Reeled down, the same sweep gets there.'
          },
          {
            id: 'none',
            says: 'Next to nothing',
            holds: { travel_m: [-0.1, 0.2] },
            reply: 'Slack eats some of it, not all: once it’s out, the jig comes.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        {
          id: 'slack',
          caption: 'Slack in the line: two thirds of your sweep gets to the jig.',
          run: slackSweep
        },
        {
          id: 'reeled',
          caption: 'Reeled down, the same sweep gets there.',
          run: lowRun(bowed, inTurn(sweep(60, 60, 0.1), reel(0.3, 1), hard))
        },
        {
          id: 'tight',
          caption: 'Tight all along: nearly all of it does.',
          run: lowRun(tightMono, hard)
        },
        { id: 'rock', caption: 'A rock: don’t set.', run: lowRun(rocks, sweep(60, 90, 6)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'The tap: rod still, and “a knock” on the picture. Graded: in time, slack gone, then a firm sweep. Only the jig is on the line: how hard the hook goes in, a scale tells you.',
      challenges: ['reel-down-and-sweep', 'set-on-fish-not-rock']
    },
    {
      kind: 'feel',
      title: 'Set or don’t',
      text: 'On a tight line some guides sweep at the tap, some reel down first. Both work. Some swing straight up, and hard.',
      cues: [
        {
          sign: 'Line jumps, slack in it',
          means: 'Reel down first.',
          basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
        },
        {
          sign: 'A bite far out, on mono',
          means: 'More line, more stretch: sweep longer.',
          basis: 'practice'
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
        'Everyone else well off to the side. You sweep to the side, face turned away: a knot that slips comes back at you.',
        'Line tied to the scale, {40 ft|12 m} off, tight. Film the scale. Sweep firm, not hard.',
        '{2 ft|60 cm} of slack: sweep.',
        'Same slack: reel down, then sweep.'
      ],
      log: ['Three readings']
    }
  ]
};
