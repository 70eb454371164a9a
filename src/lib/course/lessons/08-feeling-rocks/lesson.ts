import { ft } from '../../items/draw';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const twoStones = deeperWith({
  bottom: {
    friction: 0.4,
    stones: [
      { x_m: ft(40) - 0.3, width_m: 0.24, height_m: 0.05 },
      { x_m: ft(40) - 0.65, width_m: 0.3, height_m: 0.08 }
    ]
  },
  start: { bait_x_m: ft(40), slack_m: 0.03 }
});
const fast = lowRun(twoStones, sweep(60, 90.5, 0.9));

export default {
  id: 'feeling-rocks',
  order: 8,
  title: 'Feeling rocks',
  minutes: 6,
  about: 'Go slow, and a rock knocks, bends the rod, lets go.',
  place: deepPlace,
  objectives: ['Touch every rock in the path.', 'Know a fast hand from an empty spot.'],
  leaves_out: ['Snags.'],
  claims: [
    { says: ['You were too fast before.'], basis: 'practice' },
    { says: ['it feels both.'], basis: { run: 'slow', holds: { contact: [0.85, 1] } } },
    { says: ['no knock at all.'], basis: { run: 'fast', holds: { contact: [0, 0.33] } } },
    {
      says: 'a rock knocks, bends the rod, lets go.',
      basis: { run: 'three-stones-unseen', sign: 'knocks' }
    },
    {
      says: [
        'It feels clean, but the first rock kicks the jig off bottom.',
        'It kicks off the first rock and stays up.',
        'It doesn’t come back down between two rocks that close.',
        'You feel empty bottom.'
      ],
      basis: { run: 'fast', holds: { contact: [0, 0.33] } }
    }
  ],
  sets_up: ['slow, slower, slowest.'],
  builds_on: ['speed'],
  cautions: [drillCautions.snag],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Two low rocks lie in the path. You sweep {3 ft|1 m} fast.',
      question: {
        ask: 'How much of the move is the jig touching?',
        hint: 'What does a rock do to something that hits it fast?',
        run: fast,
        options: [
          {
            id: 'most',
            says: 'Nearly all of it',
            holds: { contact: [0.85, 1] },
            reply: 'It feels clean, but the first rock kicks the jig off bottom.'
          },
          {
            id: 'half',
            says: 'Less than a third',
            holds: { contact: [0, 0.33] },
            reply: 'Right. It kicks off the first rock and stays up. You feel empty bottom.'
          },
          {
            id: 'part',
            says: 'About half of it',
            holds: { contact: [0.4, 0.6] },
            reply: 'It doesn’t come back down between two rocks that close.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      isFelt: true,
      demos: [
        {
          id: 'slow',
          caption: 'Slow: it feels both.',
          run: lowRun(twoStones, sweep(60, 90.5, 8))
        },
        { id: 'fast', caption: 'Fast: no knock at all.', run: fast }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['three-stones-unseen', 'over-one-boulder']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'A knock',
          means: 'It hit a rock.',
          basis: { run: 'three-stones-unseen', sign: 'knocks' }
        },
        {
          sign: 'A growing load, then a drop',
          means: 'It climbed one and fell off the back.',
          basis: 'practice'
        },
        {
          sign: 'Nothing for a long time, then a thud',
          means: 'It was off the bottom, and landed.',
          basis: { run: 'fast', sign: 'lifted' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A jig you can lose', 'A spot with known rock'],
      steps: [
        'The same cast three times: slow, slower, slowest.',
        'Count the knocks each time.',
        'Most at the slowest? You were too fast before.'
      ],
      log: ['Knocks at each pace', 'Depth, weight, kind of rock']
    }
  ]
};
