import { lowToTheSide } from '../../retrieves/moves';
import { fathomley } from '../fathomley';

const sweep = (to_deg: number, duration_s: number) => ({
  setup: fathomley,
  plane: 'sweep',
  start: lowToTheSide,
  move: { kind: 'sweep', from_deg: 60, to_deg, duration_s, elevation_deg: 0 },
  hold_s: 3
});

/** Two feet of tip, slowly; and the same two feet in half a second. */
const slow = sweep(78.2, 5);
const fast = sweep(78.2, 0.5);

export default {
  id: 'one-foot',
  order: 1,
  title: 'One foot',
  minutes: 15,
  about:
    'A jig on the bottom goes as far as your rod tip pulls it. Hands misjudge both how far the tip ' +
    'went and how fast. Here you drag a jig one foot, see what it really did, and find the move ' +
    'that does it.',
  place: {
    name: 'Fathomley Water',
    note: 'An invented lake: {depth:3.35} deep, with sand and a few stones.'
  },
  objectives: [
    'Drag a jig {length:0.3048}, give or take {length:0.05}, without lifting it.',
    'Say, before you see it, whether a move was short, right or long.',
    'Drag a jig over stones and keep feeling them.'
  ],
  leaves_out: [
    'Wind, current and a drifting boat.',
    'Lifts and hops.',
    'How a skirt and a trailer move.',
    'Fish.'
  ],
  builds_on: ['safety'],
  cautions: [
    'Hooks: practise the dry drill with no hook on the line. On the water, eye protection for everyone near a cast, and look behind you.',
    'Power lines: rods conduct. Keep at least {length:3.048} from overhead lines, more where it is required.',
    'Lightning: at the first thunder, rods down and to shelter. Wait 30 minutes after the last.',
    'Water: wear the life jacket. Tell someone ashore where you are.',
    'Local rules, the conditions of the day and licensed instruction come before anything said here.'
  ],
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The jig lies on flat sand, {depth:10} out, the line just tight. Your rod is low and to the side.',
      question: {
        ask: 'You sweep the rod tip {length:0.6096} further, slow and steady. How far does the jig come?',
        hint: 'Lay a rope on the floor and pull one end slowly. What does the other end do?',
        run: slow,
        options: [
          {
            id: 'half',
            says: 'About {length:0.3048}',
            holds: { travel_m: [0.2, 0.4] },
            reply:
              'It is natural to think that stretch and sag swallow half. Pulled slowly, the line is hardly loaded: once the slack is out, the jig comes along.'
          },
          {
            id: 'same',
            says: 'About {length:0.6096}',
            holds: { travel_m: [0.48, 0.74] },
            reply:
              'So it is. Once the slack is out, a slow tip and the jig go about equally far. What you must judge is your tip.'
          },
          {
            id: 'double',
            says: 'About {length:1.2192}',
            holds: { travel_m: [1, 1.44] },
            reply:
              'The tip does go further than the hand that turns the rod. But the jig follows the tip: it gets no more line than the tip takes up.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Two moves of equal length. Watch the mark of the jig: solid on the bottom, open above it.',
      demos: [
        { id: 'slow', caption: 'Slow: the tip takes {time:5}.', run: slow },
        { id: 'fast', caption: 'The same sweep in {time:0.5}.', run: fast }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Move the rod, then hold it still. You are graded when the jig lies still.',
      challenges: [
        'exactly-one-foot',
        'exactly-two-feet',
        'exactly-three-feet',
        'contact-over-rocks'
      ]
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'A steady, light drag', means: 'It is sliding on the bottom.' },
        { sign: 'A knock, a pull that grows, then a drop', means: 'It went over a stone.' },
        {
          sign: 'Nothing at all while you move',
          means: 'You are taking up slack, or it is off the bottom.'
        },
        { sign: 'The line falls slack after you stop', means: 'It is sinking back: you lifted it.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. Ten minutes with a rod and a tape do more.',
      needs: [
        'Your rod, with no hook on the line',
        'A tape measure',
        'Open ground, clear overhead and all round'
      ],
      steps: [
        'Lay the tape on the ground beside the rod tip, along the way it sweeps.',
        'Eyes shut, sweep the tip what you think is {length:0.3048}, in two or three seconds.',
        'Look at the tape. Say how far off you were before you read it.',
        'Ten times. Then on the water: one sweep, hold still, and wait until the line is quiet.'
      ],
      log: [
        'How far the tip really went, ten numbers',
        'On the water: depth, weight, and what the bottom felt like',
        'One thing that went well, one to change'
      ]
    }
  ]
};
