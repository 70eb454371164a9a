import { sweep } from '../../retrieves/moves';
import { waterWith, place, onTheWater } from '../fathomley';
import { lowRun } from '../runs';

const windy = waterWith({ start: { bait_x_m: 18, slack_m: 0.2 }, more: { wind_m_s: 6 } });

export default {
  id: 'a-morning',
  order: 21,
  title: 'A morning on Fathomley Water',
  minutes: 15,
  about:
    'Putting it together. It is cold at first light, then wind comes up, then the fish wake. Choose, do, and write down one strength and one fault.',
  place,
  objectives: [
    'Choose a retrieve for what you find, and say why.',
    'Do three different things well, unseen, one after the other.'
  ],
  leaves_out: ['Everything that only your own water can teach you.'],
  builds_on: ['season-and-mood', 'bite-or-bottom', 'snags', 'line-and-rod'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The wind has come up. It bows the line between tip and water, and some slack lies in it.',
      question: {
        ask: 'You sweep the tip by about {length:0.66}, slowly. How far does the jig come?',
        hint: 'The bow is pulled straight first, then the jig is moved. How big is the bow beside the sweep?',
        run: lowRun(windy, sweep(60, 80, 4)),
        options: [
          {
            id: 'none',
            says: 'Hardly at all',
            holds: { travel_m: [-0.1, 0.15] },
            reply: 'The bow takes its share, but it does not take all.'
          },
          {
            id: 'part',
            says: 'Most of it, less the bow',
            holds: { travel_m: [0.28, 0.72] },
            reply:
              'Tip down, reel down, then move: in wind most of the skill is in what comes before the move.'
          },
          {
            id: 'more',
            says: 'More: the wind helps',
            holds: { travel_m: [0.8, 2] },
            reply: 'It blows on the line, not on the jig.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same drag in calm and in wind.',
      demos: [
        {
          id: 'calm',
          caption: 'Calm.',
          run: lowRun(waterWith({ start: { bait_x_m: 18, slack_m: 0.2 } }), sweep(60, 80, 4))
        },
        { id: 'wind', caption: 'Wind.', run: lowRun(windy, sweep(60, 80, 4)) },
        {
          id: 'drift',
          caption: 'The boat drifts away from the jig.',
          run: lowRun(
            waterWith({ start: { bait_x_m: 18, slack_m: 0.1 }, more: { drift_m_s: -0.15 } }),
            sweep(60, 75, 4)
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Three waters in a row. Before each: say what you choose, and why.',
      challenges: ['first-light', 'wind-comes-up', 'they-wake']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'The line bows to one side', means: 'Wind: tip down, reel down, or heavier.' },
        { sign: 'The jig comes although you hold still', means: 'You drift.' },
        { sign: 'You feel the first tap of the day', means: 'You had waited long enough.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Your log of the lessons before', 'A morning'],
      steps: [
        'Before the first cast: depth, temperature, wind, and what you choose because of them.',
        'Ten casts, then change one thing.',
        'Explain one choice to somebody.'
      ],
      log: [
        'Depth, bottom, weight, cadence',
        'One strength, one fault',
        'When you will check again: tomorrow, and in a week'
      ]
    }
  ]
};
