import { ft } from '../../items/draw';
import { inTurn, lift, pause, reel, sweep, times } from '../../retrieves/moves';
import { deeper, deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const cold = deeperWith({ temperature_C: 7, start: { bait_x_m: ft(40), slack_m: 0.03 } });
const swims = deeperWith({
  depth_m: ft(15),
  temperature_C: 21,
  start: { bait_x_m: ft(70), slack_m: 0.05 }
});

export default {
  id: 'season-and-mood',
  order: 21,
  title: 'Season and mood',
  minutes: 10,
  about:
    'Cold water: short moves, long pauses. Warm water: faster, hops, strokes, or swim it. Then let the fish’s mood correct you.',
  place: deepPlace,
  objectives: [
    'Pick a retrieve for what fish show, and defend it.',
    'Do nothing for as long as it takes.'
  ],
  leaves_out: ['Color and scent.'],
  claims: [
    {
      says: ['is thicker than at'],
      basis: { published: 'IAPWS R12-08, tests/published/constants' }
    },
    { says: 'Cold water: short moves, long pauses.', basis: 'practice' },
    { says: 'Warm water: faster, hops, strokes, or swim it.', basis: 'practice' },
    {
      says: ['The water is thicker, but a slow drag hardly feels it.'],
      basis: { alike: 'travel_m', of: ['question', 'warm-drag'], unknowns: 'drag' }
    },
    {
      says: ['Cold doesn’t.', 'Cold doesn’t hold the jig back.'],
      basis: { run: 'question', holds: { travel_m: [0.82, 0.98] } }
    },
    {
      says: [
        'The fish are slow: that’s why you slow down.',
        'Slack could do that.',
        'Cold water: short moves, long pauses.',
        'Warm water: faster, hops, strokes, or swim it.',
        'Then let the fish’s mood correct you.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'A spot that holds fish',
    'Rest 10 seconds or more between them.',
    'Do nothing for 12 seconds or more.'
  ],
  proofs: [
    {
      id: 'warm-drag',
      run: lowRun(
        deeperWith({ temperature_C: 27, start: { bait_x_m: ft(45), slack_m: 0.03 } }),
        sweep(60, 87.5, 6)
      )
    }
  ],
  builds_on: ['season-map', 'slack'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Water at {40 °F|4 °C} is thicker than at {80 °F|27 °C}. You drag {3 ft|90 cm} of tip, slowly.',
      question: {
        ask: 'How far does the jig come in the cold water?',
        hint: 'Does thick water hold back a slow thing or a quick one?',
        run: lowRun(
          deeperWith({ temperature_C: 4, start: { bait_x_m: ft(45), slack_m: 0.03 } }),
          sweep(60, 87.5, 6)
        ),
        options: [
          {
            id: 'same',
            says: 'Nearly all of it, as in summer',
            holds: { travel_m: [0.82, 0.98] },
            reply:
              'Right. Cold doesn’t hold the jig back. The fish are slow: that’s why you slow down.'
          },
          {
            id: 'less',
            says: 'Two thirds of it',
            holds: { travel_m: [0.5, 0.75] },
            reply: 'The water is thicker, but a slow drag hardly feels it.'
          },
          {
            id: 'half',
            says: 'Less than half',
            holds: { travel_m: [0, 0.45] },
            reply: 'Slack could do that. Cold doesn’t.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      day: 8,
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
            deeperWith({ start: { bait_x_m: ft(40), slack_m: 1.2 } }),
            30,
            inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3)))
          )
        },
        { id: 'hop', caption: 'Hop.', run: uprightRun(deeper, 30, lift(30, 42, 0.25)) },
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
      challenges: ['cold-water', 'dead-stick', 'swim-at-a-height']
    },
    {
      kind: 'feel',
      title: 'What fish tell you',
      cues: [
        {
          sign: 'Fish there, followed or pecked at',
          means: 'Stay. Smaller moves, longer waits.',
          basis: 'practice'
        },
        { sign: 'Bit on the fall', means: 'Give them more falls.', basis: 'practice' },
        {
          sign: 'Fish on bottom that won’t chase',
          means: 'Short drags right at them. Keep it in front of them.',
          basis: 'practice'
        },
        {
          sign: 'Fish well up, chasing bait',
          means: 'Swim it at their height, or stroke up.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A thermometer', 'A spot that holds fish'],
      steps: [
        'Start with what the temperature asks for.',
        'Not biting? Change one thing every ten casts.',
        'One cast in ten: do nothing for a full minute, not just 12 seconds.'
      ],
      log: ['Temperature, spot, retrieve, cadence', 'What you changed, and what it did']
    }
  ]
};
