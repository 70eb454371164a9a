import { sweep } from '../../retrieves/moves';
import { drillCautions, fathomley, place } from '../fathomley';
import { lowRun } from '../runs';

/** Two feet of tip, slowly; and the same two feet in half a second. */
const slow = lowRun(fathomley, sweep(60, 77.8, 5));
const fast = lowRun(fathomley, sweep(60, 77.8, 0.5));

export default {
  id: 'one-foot',
  order: 1,
  title: 'One foot',
  minutes: 9,
  about: 'Your rod tip moves the jig. Most hands misjudge how far it went, and how fast.',
  place,
  objectives: [
    'Drag a jig {1 ft|30 cm}, give or take {2 in|5 cm}, without lifting it.',
    'Know how far a sweep brings it.',
    'Drag over rocks and feel them.'
  ],
  leaves_out: ['Wind, lifts, fish.'],
  claims: [
    {
      says: 'Your rod tip moves the jig.',
      basis: { run: 'slow', holds: { travel_m: [0.48, 0.74] } }
    },
    {
      says: ['it stays down.', 'The dot stays solid.'],
      basis: { run: 'slow', sign: 'stayed down' }
    },
    {
      says: ['it lifts.', 'The dot is a ring while it’s up.'],
      basis: { run: 'fast', sign: 'lifted' }
    },
    { says: 'Most hands misjudge how far it went, and how fast.', basis: 'practice' },
    {
      says: 'A slow pull hardly loads the line: little goes into stretch.',
      // Less than half an ounce.
      basis: { run: 'slow', holds: { travel_m: [0.48, 0.74], pull_N: [0, 0.139] } }
    },
    {
      says: [
        'Slack out, slow tip: the jig goes about as far as the tip.',
        'On bottom it can’t outrun the tip: about {2 ft|60 cm}.'
      ],
      // The tip goes 0.61 m.
      basis: { run: 'slow', holds: { travel_m: [0.5, 0.61] } }
    }
  ],
  sets_up: ['You’re graded when the jig stops.'],
  builds_on: ['safety'],
  cautions: [drillCautions.both],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Jig {30 ft|9 m} out on flat sand. Line just tight, rod low to the side.',
      question: {
        ask: 'You sweep the tip {2 ft|60 cm}, slow and steady. How far does the jig come?',
        hint: 'Pull a rope along the floor. What does its far end do?',
        run: slow,
        options: [
          {
            id: 'half',
            says: 'About {1 ft|30 cm}',
            holds: { travel_m: [0.23, 0.38] },
            reply: 'A slow pull hardly loads the line: little goes into stretch.'
          },
          {
            id: 'same',
            says: 'About {2 ft|60 cm}',
            holds: { travel_m: [0.48, 0.74] },
            reply: 'Right. Slack out, slow tip: the jig goes about as far as the tip.'
          },
          {
            id: 'double',
            says: 'About {4 ft|1.2 m}',
            holds: { travel_m: [1, 1.44] },
            reply: 'On bottom it can’t outrun the tip: about {2 ft|60 cm}.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'slow', caption: 'Slow: it stays down. The dot stays solid.', run: slow },
        {
          id: 'fast',
          caption: 'Fast: it lifts. The dot is a ring while it’s up.',
          run: fast
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'One pull or several, then hold still. You’re graded when the jig stops.',
      challenges: [
        'exactly-one-foot',
        'exactly-two-feet',
        'exactly-three-feet',
        'contact-over-rocks'
      ]
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'A light, steady drag',
          means: 'It’s sliding on bottom.',
          basis: { run: 'slow', sign: 'stayed down' }
        },
        {
          sign: 'A knock, the rod loads (bends under weight), then a drop',
          means: 'It went over a rock.',
          basis: { run: 'contact-over-rocks', sign: 'knocks' }
        },
        {
          sign: 'Nothing while you move',
          means: 'You’re moving slack, or it’s off bottom.',
          basis: { run: 'fast', sign: 'lifted' }
        },
        {
          sign: 'The line goes slack after you stop',
          means: 'It just landed. You lifted it.',
          basis: { run: 'fast', sign: 'lifted' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A tape measure'],
      steps: [
        'Lay the tape along the sweep.',
        'Eyes shut, sweep the tip one foot in 2 or 3 seconds.',
        'Call it, then read the tape. Ten times.',
        'On the water, with a jig: one sweep, then hold still.'
      ],
      log: ['Your ten calls, and what the tape read', 'What bottom felt like']
    }
  ]
};
