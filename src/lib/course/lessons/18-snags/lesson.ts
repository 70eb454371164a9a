import { inTurn, pause, sweep, times } from '../../retrieves/moves';
import { deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';
import { hangs } from './crack';

const harder = lowRun(hangs, sweep(60, 110, 1.5), 2);

export default {
  id: 'snags',
  order: 18,
  title: 'Snags',
  minutes: 6,
  about: 'Get a hung jig back.',
  place: deepPlace,
  objectives: [
    'Free a jig with slack and small shakes.',
    'Know what you never do with a stuck jig.'
  ],
  leaves_out: ['How to tie on again.'],
  claims: [
    {
      says: [
        'Mostly it wedges tighter.',
        'The pull wedges it tighter.',
        'A pull wedges it tighter.',
        'it wedges.'
      ],
      basis: { run: 'harder', sign: 'set deeper' }
    },
    {
      says: ['Slack lets it slip back.', 'it slips free.'],
      basis: { run: 'shaken', sign: 'freed' }
    },
    {
      says: 'it pulls from higher up.',
      basis: { run: 'free-from-above', sign: 'freed', unknowns: 'drag' }
    },
    {
      says: ['Now and then, and it comes straight at you.', 'Then shaking seldom helps.'],
      basis: 'practice'
    }
  ],
  sets_up: [
    'Get a hung jig back.',
    'Early in a drag, the jig hangs in rock.',
    'Drag until it hangs in the rock.',
    'Raise the rod until the jig hangs.'
  ],
  builds_on: ['feeling-rocks'],
  cautions: [drillCautions.snag],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Early in a drag, the jig hangs in rock.',
      question: {
        ask: 'You keep pulling, harder. What’s most likely?',
        hint: 'Which way did it go in?',
        run: harder,
        options: [
          {
            id: 'free',
            says: 'It tears free and comes along',
            holds: { travel_m: [0.5, 3] },
            reply: 'Now and then, and it comes straight at you. Mostly it wedges tighter.'
          },
          {
            id: 'holds',
            says: 'It stays hung there',
            holds: { travel_m: [0.18, 0.22] },
            reply: 'Right. The pull wedges it tighter. Then shaking seldom helps.'
          },
          {
            id: 'back',
            says: 'It slips back off the rock',
            holds: { travel_m: [-2, -0.1] },
            reply: 'Slack lets it slip back. A pull wedges it tighter.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'harder', caption: 'Pulled harder: it wedges.', run: harder },
        {
          id: 'shaken',
          caption: 'Slack, then gentle shakes: it slips free.',
          run: lowRun(
            hangs,
            inTurn(
              sweep(60, 80, 1),
              pause(0.5),
              sweep(80, 50, 1),
              ...times(3, pause(0.7), sweep(50, 71, 0.4), sweep(71, 50, 0.4))
            )
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Hang it on purpose.',
      challenges: ['free-a-snag', 'free-from-above']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'Dead stop, and it holds',
          means: 'Hung up. Stop pulling.',
          basis: { run: 'harder', holds: { travel_m: [0.18, 0.22] } }
        },
        {
          sign: 'A little give with each shake',
          means: 'Keep going, gently.',
          basis: { run: 'shaken', sign: 'freed' }
        },
        {
          sign: 'No give at all',
          means: 'Bow and snap (the bow-and-arrow trick), then the boat over it.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A jig you can lose', 'Glasses for everyone', 'A plug knocker', 'A padded tool'],
      steps: [
        'Stop. Slack. Three shakes.',
        'Tip at it, line tight, face turned away. Draw the line like a bow between reel and first guide, let go. Once or twice.',
        'Boat right over it: a plug knocker down the line. Lift gently.',
        'Still stuck: past it, and pull from the far side.',
        'Last: wrap line on a padded tool, turn away, everyone clear, break it.',
        'Feel the last {3 ft|1 m} of line. Rough? Cut and retie.'
      ],
      log: ['What freed it', 'Line and hook checked']
    }
  ]
};
