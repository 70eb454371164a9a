import { ft } from '../../items/draw';
import { held, inTurn, pause } from '../../retrieves/moves';
import { castOut, drillCautions, place, waterWith } from '../fathomley';
import { uprightRun } from '../runs';

const free = uprightRun(waterWith({ start: castOut(ft(45)) }), 45, inTurn(held(45), pause(1)), 8);
const engaged = uprightRun(
  waterWith({ start: castOut(ft(45), 'closed') }),
  45,
  inTurn(held(45), pause(1)),
  11
);

export default {
  id: 'from-the-boat',
  order: 4,
  title: 'Down yet?',
  minutes: 6,
  about: 'The line tells you when it’s down, and the count tells you how deep.',
  place,
  objectives: ['Tell by the line when the jig is down.', 'Know what a tight line does to a fall.'],
  leaves_out: ['Fish and graphs.'],
  claims: [
    {
      says: 'They stop: it’s down.',
      basis: { run: 'free', holds: { fall_s: [2, 12] } }
    },
    {
      says: ['A tight line makes it a pendulum', 'it swings in.'],
      basis: { most: 'travel_m', of: ['engaged', 'free'], unknowns: 'drag' }
    },
    {
      says: 'In free spool, yes.',
      basis: { run: 'free', holds: { travel_m: [-0.5, 0.3] }, unknowns: 'drag' }
    },
    {
      says: ['On a tight line it swings toward you.'],
      basis: { most: 'travel_m', of: ['engaged', 'free'], unknowns: 'drag' }
    },
    {
      says: 'It swings in, but bottom stops it after a few feet.',
      basis: { run: 'engaged', holds: { travel_m: [0.7, 2.8] } }
    },
    {
      says: 'it’s {10 ft|3 m} and more.',
      basis: { run: 'deep', holds: { travel_m: [3, 9] } }
    },
    {
      says: [
        'You don’t know where the jig is.',
        'The line tells you when it’s down, and the count tells you how deep.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'In the boat, engage the reel before you lower the rod.',
    'Count seconds from the splash until the line stops running out.',
    'Then lower the rod.',
    'Count, and lower the rod when you think it’s down.',
    'You cast {45 ft|14 m} into {10 ft|3 m} and engage the reel at once: it gives no line.',
    'Free spool: the reel gives line.',
    'Watch where the line meets the water.'
  ],
  proofs: [
    {
      id: 'deep',
      run: uprightRun(
        waterWith({ depth_m: ft(30), start: castOut(ft(60), 'closed') }),
        45,
        inTurn(held(45), pause(1)),
        40
      )
    }
  ],
  builds_on: ['safety', 'one-foot'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'You cast {45 ft|14 m} into {10 ft|3 m} and engage the reel at once: it gives no line. Rod still, line tight.',
      question: {
        ask: 'Where does the jig land?',
        hint: 'A weight on a string: which way does it swing, and what stops it?',
        run: engaged,
        options: [
          {
            id: 'below',
            says: 'Right under where it hit the water',
            holds: { travel_m: [-0.5, 0.3] },
            reply: 'In free spool, yes. On a tight line it swings toward you.'
          },
          {
            id: 'nearer',
            says: 'A few feet closer to you',
            holds: { travel_m: [0.7, 2.8] },
            reply:
              'Right. A tight line makes it a pendulum. In {30 ft|9 m} it’s {10 ft|3 m} and more.'
          },
          {
            id: 'far',
            says: 'Halfway back to the boat',
            holds: { travel_m: [5, 9] },
            reply: 'It swings in, but bottom stops it after a few feet.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        {
          id: 'free',
          caption:
            'Free spool: the reel gives line. Bail (the wire arm) open, or a baitcaster’s button down.',
          run: free
        },
        {
          id: 'engaged',
          caption: 'Engaged, bail closed or reel in gear: it swings in.',
          run: engaged
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'In the boat, engage the reel before you lower the rod.',
      challenges: ['count-it-down', 'count-a-lighter-one']
    },
    {
      kind: 'feel',
      title: 'What you’d see',
      text: 'Watch where the line meets the water.',
      cues: [
        {
          sign: 'Line runs out, then stops',
          means: 'It’s down.',
          basis: { run: 'free', holds: { fall_s: [2, 12] } }
        },
        {
          sign: 'It stops way early',
          means: 'A ledge, a fish, or a tight line.',
          basis: 'practice'
        },
        {
          sign: 'It never runs out',
          means: 'The line is tight. You don’t know where the jig is.',
          basis: { most: 'pull_N', of: ['engaged', 'free'], unknowns: 'drag' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: [
        'Your rod, and a jig you know the weight of',
        'A watch',
        'Water you know the depth of'
      ],
      steps: [
        'Cast and stay in free spool.',
        'Count seconds from the splash until the line stops running out.',
        'Three times at one spot.'
      ],
      log: ['Depth, weight, three counts']
    }
  ]
};
