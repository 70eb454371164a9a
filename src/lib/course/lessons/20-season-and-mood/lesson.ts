import { inTurn, lift, pause, reel, sweep, times } from '../../retrieves/moves';
import { drillCautions, fathomley, place, waterWith } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const cold = waterWith({ temperature_C: 7, start: { bait_x_m: 12, slack_m: 0.03 } });
const swims = waterWith({
  depth_m: 4.5,
  temperature_C: 21,
  start: { bait_x_m: 22, slack_m: 0.05 }
});

export default {
  id: 'season-and-mood',
  order: 20,
  title: 'Season and mood',
  minutes: 10,
  about:
    'Cold water: short moves, long pauses. Warm water: faster, hops, strokes, or swim it. No fish in ten minutes of good casts? Move first, then change the retrieve.',
  place,
  objectives: [
    'Pick retrieve, weight and pace for a temperature and a mood.',
    'Do nothing for as long as it takes.'
  ],
  leaves_out: ['Your lake’s own calendar: ask locally.'],
  claims: [
    { says: 'Cold water: short moves, long pauses.', basis: 'practice' },
    { says: 'Warm water: faster, hops, strokes, or swim it.', basis: 'practice' },
    {
      says: 'No fish in ten minutes of good casts? Move first, then change the retrieve.',
      basis: 'practice'
    },
    {
      says: 'Cold water moves your jig just like warm water does.',
      basis: { run: 'question', holds: { travel_m: [0.78, 1] } }
    }
  ],
  builds_on: ['hops', 'stroke-and-fall', 'slack'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Water at {39 °F|4 °C} is thicker than at {79 °F|26 °C}. You drag {3 ft|90 cm} of tip, slowly.',
      question: {
        ask: 'How far does the jig come in the cold water?',
        hint: 'What does thick water hold back: a slow thing or a quick one? Which is this drag?',
        run: lowRun(
          waterWith({ temperature_C: 4, start: { bait_x_m: 14, slack_m: 0.03 } }),
          sweep(60, 87.5, 6)
        ),
        options: [
          {
            id: 'same',
            says: 'Nearly all of it, as in summer',
            holds: { travel_m: [0.78, 1] },
            reply:
              'Right. Cold water moves your jig just like warm water does. The fish are slow, so you slow down.'
          },
          {
            id: 'less',
            says: 'Two thirds of it',
            holds: { travel_m: [0.5, 0.75] },
            reply:
              'The water is thicker, but a slow drag hardly feels it. Nearly all of it arrives.'
          },
          {
            id: 'half',
            says: 'Less than half',
            holds: { travel_m: [0, 0.45] },
            reply: 'Slack eats half a drag. Cold doesn’t: nearly all of it arrives.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Four retrieves, cold to warm.',
      demos: [
        {
          id: 'cold',
          caption: 'Drag and wait.',
          run: lowRun(cold, inTurn(sweep(60, 70, 2.5), pause(4.5), sweep(70, 80, 2.5)))
        },
        {
          id: 'shake',
          caption: 'Shake in place.',
          run: uprightRun(
            waterWith({ start: { bait_x_m: 12, slack_m: 1.2 } }),
            30,
            inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3)))
          )
        },
        { id: 'hop', caption: 'Hop.', run: uprightRun(fathomley, 30, lift(30, 42, 0.25)) },
        {
          id: 'swim',
          caption: 'Swim.',
          run: uprightRun(swims, 20, inTurn(lift(20, 75, 0.7), reel(2.2, 2.2), reel(3.75, 5)))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Patience first. The slow ones are harder.',
      challenges: ['cold-water', 'dead-stick', 'swim-at-a-height']
    },
    {
      kind: 'feel',
      title: 'The season map',
      text: 'Places to start, by bottom temperature and season. Lakes differ.',
      cues: [
        {
          sign: 'Under {50 °F|10 °C}, winter',
          means: 'Steep banks and deep edges. Short slow drags, pauses of 10 seconds and more.',
          basis: 'practice'
        },
        {
          sign: '{50 to 60 °F|10 to 15 °C}, spring and late fall',
          means: 'Points and ledges near the spawning bays. Drags and short hops.',
          basis: 'practice'
        },
        {
          sign: '{60 to 75 °F|15 to 24 °C}, after the spawn and fall',
          means: 'First drops, humps, rock. Mix it up.',
          basis: 'practice'
        },
        {
          sign: 'Over {75 °F|24 °C}, summer',
          means: 'Offshore ledges and humps, above the thermocline. Hops, strokes, or drag deep.',
          basis: 'practice'
        },
        {
          sign: 'No bites in ten minutes, no fish on sonar',
          means: 'Move first. A change of retrieve can’t fix an empty spot.',
          basis: 'practice'
        },
        {
          sign: 'Fish there, followed or pecked at',
          means: 'Stay. Smaller moves, longer pauses.',
          basis: 'practice'
        },
        { sign: 'Bit on the fall', means: 'Give them more falls.', basis: 'practice' }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      text: 'Temperature first, then the spot, then the retrieve.',
      needs: ['A thermometer', 'A notebook'],
      steps: [
        'Read the temperature. Pick a spot from the map.',
        'Ten minutes of good casts. Nothing? Move.',
        'Fish there but not biting? Change one thing per ten casts.'
      ],
      log: [
        'Temperature, spot, retrieve, weight, cadence',
        'The one thing you changed, and what it did'
      ]
    }
  ]
};
