import { ft } from '../../items/draw';
import { lift } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { uprightRun } from '../runs';

/** 90 ft out: a cast as guides make it, and in 20 ft of water as flat a line as a short one in shallow water. */
const CAST_M = ft(90);
const far = deeperWith({ start: { bait_x_m: CAST_M, slack_m: 0.05 } });
/** Near the boat and deep: the line stands steep. */
const close = deeperWith({ depth_m: ft(30), start: { bait_x_m: ft(20), slack_m: 0.05 } });

export default {
  id: 'the-clock',
  order: 9,
  title: 'The clock',
  minutes: 8,
  about:
    'Nine is level, twelve is straight up. Far out, a late hour moves the jig most. Close in, an early one lifts it most.',
  place: deepPlace,
  objectives: [
    'Know what an early and a late hour of lift do to the jig.',
    'Lift a jig and follow it down.'
  ],
  leaves_out: ['Hops.'],
  claims: [
    {
      says: [
        'Down low the tip moves partly across the line, and that part moves nothing.',
        'about two thirds gets to the jig.'
      ],
      // Of {3 ft 5 in|1.04 m} of tip, an hour of this rod.
      basis: { run: 'nine-to-ten', holds: { travel_m: [0.6, 0.75] } }
    },
    {
      says: 'nearly all.',
      basis: { run: 'ten-to-eleven', holds: { travel_m: [0.92, 1.03] } }
    },
    {
      says: ['Up high it pulls straight away from the jig.', 'all of it, straight back.'],
      basis: { most: 'travel_m', of: ['eleven-to-twelve', 'ten-to-eleven'] }
    },
    {
      says: 'Far out, a late hour moves the jig most.',
      basis: { most: 'travel_m', of: ['eleven-to-twelve', 'nine-to-ten'] }
    },
    {
      says: 'Close in, an early one lifts it most.',
      basis: { most: 'peak_height_m', of: ['close-first', 'close-third'] }
    },
    {
      says: 'the model says {8 to 9½ ft|2.4 to 2.9 m}.',
      basis: { run: 'question', holds: { travel_m: [2.4, 2.9] }, disputed: true }
    },
    {
      says: 'That’s about one late hour.',
      basis: { run: 'nine-to-ten', holds: { travel_m: [0.6, 0.95] } }
    },
    {
      says: [
        'Nine is level, twelve is straight up.',
        'The tip only gets about {9 ft|2.8 m} from where it started.',
        'The rest would have to be swing.',
        'Most guides see about {6 ft|1.8 m};',
        'Up to eleven, guides see the jig come about half as far.',
        'Nobody has filmed which is right.',
        'A rod that stops short of twelve would explain it.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'From nine o’clock, lift slowly until the jig has come {2 ft|60 cm}.',
    'From ten o’clock, lift slowly until the jig has come {3 ft|90 cm}.',
    'Lower the rod as it falls.'
  ],
  proofs: [
    {
      id: 'lift-and-hold',
      run: uprightRun(
        deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
        10,
        lift(10, 40, 0.55),
        5
      )
    },
    { id: 'close-first', run: uprightRun(close, 0, lift(0, 30, 1.5)) },
    { id: 'close-third', run: uprightRun(close, 60, lift(60, 90, 1.5)) }
  ],
  builds_on: ['safety', 'from-the-boat', 'slack'],
  cautions: [drillCautions.both],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Jig {90 ft|27 m} out, line just tight, a {7 ft 9 in|2.4 m} rod at nine.',
      question: {
        ask: 'You lift evenly to twelve. About how far does the jig come?',
        hint: 'Where is the tip at nine, and where at twelve?',
        run: uprightRun(far, 0, lift(0, 90, 2.5)),
        options: [
          {
            id: 'one',
            says: '{2 to 3 ft|60 cm to 1 m}',
            holds: { travel_m: [0.6, 0.95] },
            reply:
              'That’s about one late hour. Most guides see about {6 ft|1.8 m}; the model says {8 to 9½ ft|2.4 to 2.9 m}.'
          },
          {
            id: 'more',
            says: '{5 to 10 ft|1.5 to 3 m}',
            holds: { travel_m: [1.5, 3.05] },
            reply:
              'Right. Most guides see about {6 ft|1.8 m}; the model says {8 to 9½ ft|2.4 to 2.9 m}. Nobody has filmed which is right. A rod that stops short of twelve would explain it.'
          },
          {
            id: 'far',
            says: '{15 ft|4.5 m} or more',
            holds: { travel_m: [4.5, 8] },
            reply:
              'The tip only gets about {9 ft|2.8 m} from where it started. The rest would have to be swing. Most guides see about {6 ft|1.8 m}; the model says {8 to 9½ ft|2.4 to 2.9 m}.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Down low the tip moves partly across the line, and that part moves nothing. Up high it pulls straight away from the jig.',
      demos: [
        {
          id: 'nine-to-ten',
          caption: 'Nine to ten: about two thirds gets to the jig.',
          run: uprightRun(far, 0, lift(0, 30, 1.5))
        },
        {
          id: 'ten-to-eleven',
          caption: 'Ten to eleven: nearly all.',
          run: uprightRun(far, 30, lift(30, 60, 1.5))
        },
        {
          id: 'eleven-to-twelve',
          caption: 'Eleven to twelve: all of it, straight back.',
          run: uprightRun(far, 60, lift(60, 90, 1.5))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Up to eleven, guides see the jig come about half as far.',
      challenges: ['one-hour', 'late-hour', 'lift-and-follow']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'The rod loads late in the lift',
          means: 'The early part took up slack.',
          basis: { most: 'travel_m', of: ['eleven-to-twelve', 'nine-to-ten'] }
        },
        {
          sign: 'Rod past eleven',
          means: 'You’re out of sweep. Reel down before you set.',
          basis: 'practice'
        },
        {
          sign: 'The line stays just short of tight on the way down',
          means: 'Good. It falls straight, and you’d see a bite.',
          basis: { most: 'travel_m', of: ['lift-and-hold', 'lift-and-follow'], unknowns: 'drag' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A wall with the hours marked'],
      steps: [
        'Eyes shut, nine to ten. Open, look. Ten times.',
        'Then ten to eleven.',
        'On the water: one hour up, follow down.'
      ],
      log: ['Where the rod really was', 'What you felt at each hour']
    }
  ]
};
