import { lift, sweep } from '../../retrieves/moves';
import { fathomley, waterWith, place, onTheWater } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

export default {
  id: 'slack',
  order: 3,
  title: 'Slack, the missing variable',
  minutes: 12,
  about:
    'The same move moves the jig a foot, or not at all. What differs is the slack, and you cannot see it under water. Rod and reel have separate jobs: the reel recovers slack, the rod moves the bait.',
  place,
  objectives: [
    'Say what slack does to a drag and to a hop.',
    'Reel in slack without moving the jig.'
  ],
  leaves_out: ['Wind and drift, which make slack by themselves: lesson 18.'],
  builds_on: ['one-foot', 'your-hands-ruler'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The line hangs in a bow and hardly pulls at the tip.',
      question: {
        ask: 'You sweep the tip by about {length:0.66}, slowly. How far does the jig come?',
        hint: 'What must the sweep take up before the jig feels anything? Is that all of the sweep?',
        run: lowRun(
          { ...fathomley, start: { bait_x_m: 14, horizontal_tension_N: 0.007 } },
          sweep(60, 80, 4)
        ),
        options: [
          {
            id: 'all',
            says: 'About {length:0.66}',
            holds: { travel_m: [0.56, 0.8] },
            reply:
              'On a tight line it would. Here the first part of your move only straightens the bow.'
          },
          {
            id: 'part',
            says: 'Clearly less, but it comes',
            holds: { travel_m: [0.1, 0.52] },
            reply:
              'The bow takes its share first, and the water holds the bow: it gives way slowly, and the rest reaches the jig.'
          },
          {
            id: 'none',
            says: 'Not at all',
            holds: { travel_m: [-0.05, 0.06] },
            reply:
              'It needs more slack than that. But you feel nearly nothing, and that is what misleads.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same lift on two lines. Only the slack differs.',
      demos: [
        {
          id: 'tight',
          caption: 'Just tight.',
          run: uprightRun(
            waterWith({ start: { bait_x_m: 10, slack_m: 0.02 } }),
            10,
            lift(10, 40, 0.5)
          )
        },
        {
          id: 'slack',
          caption: 'With {length:0.6} of slack.',
          run: uprightRun(
            waterWith({ start: { bait_x_m: 10, slack_m: 0.6 } }),
            10,
            lift(10, 40, 0.5)
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'First pull through the slack. Then do the reel’s work with the reel.',
      challenges: ['through-the-slack', 'reel-takes-slack']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'You move and feel nothing', means: 'You are moving slack.' },
        { sign: 'The weight comes on softly and late', means: 'The bow is straightening.' },
        {
          sign: 'You reel and feel weight at once',
          means: 'There was no slack: you are moving the jig with the reel.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Your rod, a jig without hook, a lawn', 'A tape measure'],
      steps: [
        'Lay the jig out, line just tight. Sweep one foot, look.',
        'Turn the rod back without reeling. Sweep again, look.',
        'Turn back and reel until the line just lifts off the grass. Sweep again, look.'
      ],
      log: [
        'How far the jig came in each of the three',
        'On the water: how many turns of the reel after each drag'
      ]
    }
  ]
};
