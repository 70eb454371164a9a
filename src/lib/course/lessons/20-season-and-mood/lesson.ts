import { inTurn, lift, pause, reel, sweep, times } from '../../retrieves/moves';
import { fathomley, waterWith, place, onTheWater } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

export default {
  id: 'season-and-mood',
  order: 20,
  title: 'Season and mood',
  minutes: 15,
  about:
    'Cold water: short moves, long rests. Warm water: faster, hops, strokes, or a swim. Physics is nearly the same all year; what changes is the fish. Change one thing at a time.',
  place,
  objectives: [
    'Choose retrieve, weight and pace for a temperature and a mood.',
    'Do nothing for as long as it takes.'
  ],
  leaves_out: [
    'Where the fish are.',
    'Oxygen and thermoclines, but for one sentence: below one with little oxygen there are often few fish.'
  ],
  builds_on: ['hops', 'stroke-and-fall', 'slack'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'Water of {temperature:4} is thicker than water of {temperature:26}.',
      question: {
        ask: 'A slow drag of {length:1} of tip, in cold water. How far does the jig come?',
        hint: 'What does thick water hold back: a slow thing or a quick one? Which is this drag?',
        run: lowRun(
          waterWith({ temperature_C: 4, start: { bait_x_m: 14, slack_m: 0.03 } }),
          sweep(60, 89, 6)
        ),
        options: [
          {
            id: 'same',
            says: 'As far as in summer: nearly all of it',
            holds: { travel_m: [0.85, 1.05] },
            reply:
              'Cold water moves your jig just as warm water does. It is the fish that is slow, so you are.'
          },
          {
            id: 'less',
            says: 'Two thirds of it',
            holds: { travel_m: [0.5, 0.8] },
            reply: 'The water is thicker, but the drag is slow, and the line hardly notices.'
          },
          {
            id: 'half',
            says: 'Less than half',
            holds: { travel_m: [0, 0.45] },
            reply: 'Nothing in the water eats half a drag. Slack does.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Four retrieves from cold to warm.',
      demos: [
        {
          id: 'cold',
          caption: 'Drag and wait.',
          run: lowRun(
            waterWith({ temperature_C: 7, start: { bait_x_m: 12, slack_m: 0.03 } }),
            inTurn(sweep(60, 70, 2.5), pause(4.5), sweep(70, 80, 2.5))
          )
        },
        {
          id: 'shake',
          caption: 'Shaken in place.',
          run: uprightRun(
            waterWith({ start: { bait_x_m: 12, slack_m: 1.2 } }),
            30,
            inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3)))
          )
        },
        { id: 'hop', caption: 'Hopped.', run: uprightRun(fathomley, 30, lift(30, 42, 0.25)) },
        {
          id: 'swim',
          caption: 'Swum.',
          run: uprightRun(
            waterWith({ depth_m: 4.5, temperature_C: 21, start: { bait_x_m: 22, slack_m: 0.05 } }),
            20,
            inTurn(lift(20, 75, 0.7), reel(2.2, 2.2), reel(3.75, 5))
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Patience first: the slow ones are harder.',
      challenges: ['cold-water', 'dead-stick', 'shake-in-place', 'swim-at-a-height']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'Nothing for a minute', means: 'That may be right. Do not fidget.' },
        { sign: 'Followed but not taken', means: 'Smaller moves, longer rests.' },
        { sign: 'Taken on the fall', means: 'Give it more falls.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A thermometer', 'A notebook'],
      steps: [
        'Below {temperature:10}: slow short drags, long rests.',
        '{temperature:10} to {temperature:16}: drags, short hops.',
        '{temperature:16} to {temperature:24}: mixed. Above: faster, hops, strokes, or drag deep.',
        'Change one thing in ten casts.'
      ],
      log: [
        'Temperature, retrieve, weight, cadence',
        'The one thing you changed, and what came of it'
      ]
    }
  ]
};
