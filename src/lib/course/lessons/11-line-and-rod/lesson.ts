import { lift, sweep } from '../../retrieves/moves';
import { waterWith, place, onTheWater } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

export default {
  id: 'line-and-rod',
  order: 11,
  title: 'Line and rod',
  minutes: 12,
  about:
    'Fluorocarbon sinks, nylon floats nearly and stretches, braid floats and does not stretch. Rods bend more or less. How much of that reaches the jig depends on one thing: how quickly you move.',
  place,
  objectives: [
    'Say when stretch and flex matter, and when they do not.',
    'Adjust a hop to a soft rod.'
  ],
  leaves_out: ['Knots, wear and strength: check your line each time.'],
  builds_on: ['slack', 'hops'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'Nylon is known to stretch. You drag slowly: {length:1} of tip in {time:6}.',
      question: {
        ask: 'How far does the jig come on nylon?',
        hint: 'How hard does a slow drag pull? Hang that weight on a line in your mind.',
        run: lowRun(
          waterWith({
            line: { material: 'nylon', diameter_m: 0.0003 },
            start: { bait_x_m: 14, slack_m: 0.05 }
          }),
          sweep(60, 89, 6)
        ),
        options: [
          {
            id: 'most',
            says: 'Nearly all of it',
            holds: { travel_m: [0.8, 1.05] },
            reply:
              'A slow drag pulls with hardly any force, and so hardly stretches anything. Stretch is a matter of hops and of setting a hook.'
          },
          {
            id: 'half',
            says: 'About half',
            holds: { travel_m: [0.4, 0.65] },
            reply: 'It would take a pull many times as hard to lose so much.'
          },
          {
            id: 'none',
            says: 'Next to nothing',
            holds: { travel_m: [-0.05, 0.2] },
            reply: 'That is slack, not stretch.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same quick lift on three lines.',
      demos: [
        {
          id: 'fluoro',
          caption: 'Fluorocarbon.',
          run: uprightRun(
            waterWith({ start: { bait_x_m: 26, slack_m: 0.1 } }),
            10,
            lift(10, 55, 0.5)
          )
        },
        {
          id: 'nylon',
          caption: 'Nylon.',
          run: uprightRun(
            waterWith({
              line: { material: 'nylon', diameter_m: 0.0003 },
              start: { bait_x_m: 26, slack_m: 0.1 }
            }),
            10,
            lift(10, 55, 0.5)
          )
        },
        {
          id: 'braid',
          caption: 'Braid with a leader.',
          run: uprightRun(
            waterWith({
              line: {
                material: 'braid',
                diameter_m: 0.0002,
                leader: { material: 'fluorocarbon', diameter_m: 0.0003, length_m: 2 }
              },
              start: { bait_x_m: 26, slack_m: 0.1 }
            }),
            10,
            lift(10, 55, 0.5)
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'A soft rod, then a stiff line.',
      challenges: ['soft-rod-hop', 'braid-drag']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'Everything is soft and late', means: 'Nylon, a soft rod, or slack.' },
        {
          sign: 'Every pebble is loud',
          means: 'Braid. It is also loud for the fish’s mouth: be gentle.'
        },
        { sign: 'The line lies on the surface in a bow', means: 'Braid in wind: reel down.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['The rod and line you fish', 'A spring scale, no hook on the line'],
      steps: [
        'Pull the scale with the tip at ten as you would hop, and read it.',
        'Then as you would drag.',
        'Compare: it is the reading that stretches a line.'
      ],
      log: ['Both readings', 'What you would change in your set-up, and why']
    }
  ]
};
