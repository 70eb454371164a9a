import { ft } from '../../items/draw';
import { inTurn, lift, pause } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { uprightRun } from '../runs';

const out = deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } });
const heldUp = uprightRun(out, 15, lift(15, 75, 0.45), 5);

export default {
  id: 'stroke-and-fall',
  order: 11,
  title: 'Stroke and fall',
  minutes: 6,
  about: 'A hard snap and a controlled fall, for warm water and active fish.',
  place: deepPlace,
  objectives: [
    'Snap it up, then follow it down on semi-slack line.',
    'Know what a pendulum fall costs.'
  ],
  leaves_out: ['The hook set.'],
  claims: [
    {
      says: [
        'Two things bring it in: the snap, and the swing on a tight line.',
        'Rod stays up: it swings.',
        'Rod follows: it drops.',
        'It’s swinging.',
        'Follow the falling jig with the rod so it doesn’t swing in.'
      ],
      basis: { most: 'travel_m', of: ['held', 'follow'] }
    },
    {
      says: 'A hard snap and a controlled fall, for warm water and active fish.',
      basis: 'practice'
    },
    {
      says: 'It doesn’t drop straight: a tight line swings it in.',
      basis: { most: 'travel_m', of: ['held', 'follow'] }
    },
    {
      says: 'the snap, then the swing.',
      basis: { most: 'travel_m', of: ['held', 'follow'] }
    },
    {
      says: [
        'The model has it land about {8½ ft|2.6 m} closer than it started:',
        'One stroke takes up one swing of the tip, plus the pendulum.'
      ],
      basis: { run: 'held', holds: { travel_m: [2.3, 2.9] } }
    },
    {
      says: ['Most bites on a stroke come on the fall.', 'Guides see less, as on the clock.'],
      basis: 'practice'
    }
  ],
  sets_up: ['Lower the rod with it as it falls.'],
  builds_on: ['hops'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Jig {45 ft|14 m} out. You snap from nine-thirty to eleven-thirty and leave the rod up.',
      question: {
        ask: 'Where does it land?',
        hint: 'Two things bring it in: the snap, and the swing on a tight line.',
        run: heldUp,
        options: [
          {
            id: 'little',
            says: 'Right where the snap left it',
            // A snap that is followed down.
            holds: { travel_m: [1.35, 1.95] },
            reply:
              'It doesn’t drop straight: a tight line swings it in. Guides see less, as on the clock.'
          },
          {
            id: 'much',
            says: 'Closer in than that',
            holds: { travel_m: [2.1, 2.9] },
            reply:
              'Right. The model has it land about {8½ ft|2.6 m} closer than it started: the snap, then the swing. Guides see less, as on the clock.'
          },
          {
            id: 'boat',
            says: 'Nearly at the boat',
            holds: { travel_m: [5, 10] },
            reply:
              'One stroke takes up one swing of the tip, plus the pendulum. Guides see less, as on the clock.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'held', caption: 'Rod stays up: it swings.', run: heldUp },
        {
          id: 'follow',
          caption: 'Rod follows: it drops.',
          run: uprightRun(out, 15, inTurn(lift(15, 75, 0.45), pause(0.1), lift(75, 20, 1.8)), 4)
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['stroke', 'fall-on-a-following-rod']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      text: 'Most bites on a stroke come on the fall.',
      cues: [
        {
          sign: 'Weight all the way down',
          means: 'Too tight. It’s swinging.',
          basis: { most: 'travel_m', of: ['held', 'follow'] }
        },
        {
          sign: 'Nothing on the way down',
          means: 'Too slack. You’d miss a bite.',
          basis: 'practice'
        },
        { sign: 'A touch of weight now and then', means: 'That’s it.', basis: 'practice' }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['Room overhead', 'A jig whose fall you’ve timed'],
      steps: [
        'Snap nine-thirty to eleven-thirty. Follow it down, eyes on the line.',
        'Five strokes, then rest the spot.'
      ],
      log: ['Seconds of fall', 'Where they bit: up, down, or at rest']
    }
  ]
};
