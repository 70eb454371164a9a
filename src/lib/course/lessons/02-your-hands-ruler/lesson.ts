import { sweep } from '../../retrieves/moves';
import { drillCautions, fathomley, place } from '../fathomley';
import { lowRun } from '../runs';

export default {
  id: 'your-hands-ruler',
  order: 2,
  title: 'Your hand’s ruler',
  minutes: 7,
  about: 'What your hand calls a foot isn’t one. Find out by how much.',
  place,
  objectives: [
    'Call how far the jig went before you see it.',
    'Know if your hand runs long, short or uneven.'
  ],
  leaves_out: ['Slack.'],
  claims: [
    { says: 'Most hands: about {2 ft|60 cm}.', basis: 'practice' },
    { says: 'What your hand calls a foot isn’t one.', basis: 'practice' },
    {
      says: 'The jig follows the tip, not the hand.',
      basis: { run: 'question', holds: { travel_m: [0.48, 0.72] } }
    },
    {
      says: [
        'The rod is a lever: the tip goes about {2 ft|60 cm}.',
        'It only gets what the tip takes up: about {2 ft|60 cm}.'
      ],
      basis: { run: 'question', holds: { travel_m: [0.48, 0.72] } }
    },
    {
      says: 'That’s your hand.',
      basis: 'practice'
    }
  ],
  sets_up: [
    'One hand at the reel stays put.',
    'The other moves the rod’s butt {5 in|12 cm}, slowly.',
    'Find out by how much.'
  ],
  builds_on: ['one-foot'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Line tight, rod low. One hand at the reel stays put. The other moves the rod’s butt {5 in|12 cm}, slowly.',
      question: {
        ask: 'How far does the jig come?',
        hint: 'Turn a pencil by one end. Which end moves most?',
        // The butt's share of the lever: 19 degrees.
        run: lowRun(fathomley, sweep(60, 79, 4.4)),
        options: [
          {
            id: 'hand',
            says: 'About {5 in|12 cm}',
            holds: { travel_m: [0.1, 0.15] },
            reply: 'That’s your hand. The rod is a lever: the tip goes about {2 ft|60 cm}.'
          },
          {
            id: 'tip',
            says: 'About {2 ft|60 cm}',
            holds: { travel_m: [0.48, 0.72] },
            reply: 'Right. The jig follows the tip, not the hand.'
          },
          {
            id: 'more',
            says: 'About {4 ft|1.2 m}',
            holds: { travel_m: [0.95, 1.4] },
            reply: 'It only gets what the tip takes up: about {2 ft|60 cm}.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        {
          id: 'meant-as-a-foot',
          caption: 'Most hands: about {2 ft|60 cm}.',
          run: lowRun(fathomley, sweep(60, 80, 2))
        },
        { id: 'a-real-foot', caption: 'A real foot.', run: lowRun(fathomley, sweep(60, 70, 2.5)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Call it, then look: the call counts, too.',
      challenges: ['one-foot-half-seen', 'two-feet-unseen', 'one-foot-unseen']
    },
    {
      kind: 'feel',
      title: 'What you’d notice',
      cues: [
        {
          sign: '“That was a foot”',
          means: 'Call it, read the tape, and keep both numbers.',
          basis: 'practice'
        },
        {
          sign: 'They felt the same, and weren’t',
          means: 'Your hand is uneven. Go slower.',
          basis: 'practice'
        },
        {
          sign: 'Every try runs long by the same',
          means: 'You run long: that’s your bias. Aim shorter.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A tape measure', 'A friend, or a phone to film it'],
      steps: ['Eyes shut: one foot, ten times.', 'Then two feet, ten times.'],
      log: ['Twenty numbers', 'Average and spread of each ten']
    }
  ]
};
