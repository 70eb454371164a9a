import { sweep } from '../../retrieves/moves';
import { drillCautions, fathomley, place } from '../fathomley';
import { lowRun } from '../runs';

export default {
  id: 'your-hands-ruler',
  order: 2,
  title: 'Your hand’s ruler',
  minutes: 7,
  about: 'Your hand measures a foot its own way, and it’s off. Find out by how much.',
  place,
  objectives: [
    'Call how far the jig went before you see it.',
    'Know if your hand runs long, short or uneven.'
  ],
  leaves_out: ['Slack: next lesson.'],
  claims: [
    { says: 'Most hands: about {2 ft|60 cm}.', basis: 'practice' },
    { says: 'Your hand measures a foot its own way, and it’s off.', basis: 'practice' },
    {
      says: 'The jig follows the tip, not the butt.',
      basis: { run: 'question', holds: { travel_m: [0.48, 0.72] } }
    },
    {
      says: [
        'The rod is a lever: the tip goes about {2 ft|60 cm}, and the jig follows.',
        'The jig never gets more line than the tip takes up: about {2 ft|60 cm}.'
      ],
      basis: { run: 'question', holds: { travel_m: [0.48, 0.72] } }
    },
    {
      says: ['That’s the butt.', 'Three faults, three cures.'],
      basis: 'practice'
    }
  ],
  sets_up: [
    'You sweep slowly until the butt has swung {4½ in|12 cm}.',
    'The jig is hidden while you move.',
    'You’re graded on the call, too.',
    'Find out by how much.'
  ],
  builds_on: ['one-foot'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Line tight, a {7 ft 9 in|2.4 m} rod low, held {14 in|35 cm} up the butt. You sweep slowly until the butt has swung {4½ in|12 cm}.',
      question: {
        ask: 'How far does the jig come?',
        hint: 'Turn a pencil on the table by one end. Which end moves most, and which end holds the line?',
        say: 'feet',
        // The butt's share of the lever: 19 degrees.
        run: lowRun(fathomley, sweep(60, 79, 4.4)),
        options: [
          {
            id: 'hand',
            says: 'About {4 in|10 cm}',
            holds: { travel_m: [0.08, 0.12] },
            reply:
              'That’s the butt. The rod is a lever: the tip goes about {2 ft|60 cm}, and the jig follows.'
          },
          {
            id: 'tip',
            says: 'About {2 ft|60 cm}',
            holds: { travel_m: [0.48, 0.72] },
            reply: 'Right. The jig follows the tip, not the butt.'
          },
          {
            id: 'more',
            says: 'About {4 ft|1.2 m}',
            holds: { travel_m: [0.95, 1.4] },
            reply: 'The jig never gets more line than the tip takes up: about {2 ft|60 cm}.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'You mean one foot.',
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
      text: 'The jig is hidden while you move. Call it, then look. You’re graded on the call, too.',
      challenges: ['one-foot-half-seen', 'two-feet-unseen', 'one-foot-unseen']
    },
    {
      kind: 'feel',
      title: 'What you’d notice',
      text: 'Three faults, three cures.',
      cues: [
        {
          sign: '“That was a foot”',
          means: 'Read the tape before you believe it.',
          basis: 'practice'
        },
        {
          sign: 'Felt alike, and the jig says no',
          means: 'Your hand is uneven. Go slower.',
          basis: 'practice'
        },
        {
          sign: 'Every try is long by the same',
          means: 'You run long: that’s your bias. Aim shorter.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'Twenty sweeps on the lawn.',
      needs: ['Your rod, no hook', 'A tape measure', 'A friend, or a phone to film it'],
      steps: ['Eyes shut: one foot, ten times.', 'Then two feet, ten times.'],
      log: ['Twenty numbers', 'Average and spread of each ten']
    }
  ]
};
