import { sweep } from '../../retrieves/moves';
import { waterWith, JIGS, place, onTheWater } from '../fathomley';
import { lowRun } from '../runs';

const light = waterWith({ mass_kg: JIGS.quarter });

export default {
  id: 'weight-and-depth',
  order: 5,
  title: 'Weight and depth',
  minutes: 14,
  about:
    'A heavier jig falls faster and keeps the bottom better; a lighter one is slower and easier to lift by mistake. Depth costs time. Choose by depth and wind, then check with a count.',
  place,
  objectives: [
    'Choose a weight for a depth, and say why.',
    'Predict a longer count for a lighter jig or a deeper place.'
  ],
  leaves_out: ['Tungsten and other metals.', 'Shapes of heads.'],
  builds_on: ['from-the-boat', 'one-foot'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The drag that keeps {weight:0.02835} on the bottom: {length:1} of tip in {time:2}. Now the jig weighs {weight:0.00709}.',
      question: {
        ask: 'What does the light one do?',
        hint: 'Which of the two sinks more slowly? What sinks slowly needs little to stay up.',
        run: lowRun(light, sweep(60, 89, 2)),
        options: [
          {
            id: 'stays',
            says: 'It stays on the bottom all the way',
            holds: { contact: [0.92, 1] },
            reply:
              'The heavy one does. A light jig leaves the bottom at a much lower speed: fall speed and lift-off speed go together.'
          },
          {
            id: 'lifts',
            says: 'It is off the bottom for a good part of its way',
            holds: { contact: [0, 0.88] },
            reply:
              'Lift-off speed goes with fall speed, and a quarter of the weight falls at about half the speed.'
          },
          {
            id: 'back',
            says: 'It does not move at all',
            holds: { travel_m: [-0.1, 0.1] },
            reply: 'Weight has little to do with how far it comes; the line decides that.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same move with a light and with a heavy jig.',
      demos: [
        { id: 'light', caption: '{weight:0.00709}.', run: lowRun(light, sweep(60, 89, 2)) },
        {
          id: 'heavy',
          caption: '{weight:0.02835}.',
          run: lowRun(waterWith({ mass_kg: JIGS.ounce }), sweep(60, 89, 2))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'A long count, a light jig, and a heavy one in deep water.',
      challenges: ['thirty-feet-down', 'light-and-slow', 'heavy-in-deep-water']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        {
          sign: 'You feel little between two rocks',
          means: 'Too light for this depth or wind, or too fast.'
        },
        { sign: 'It wedges often', means: 'Too heavy, or the angle is too flat.' },
        {
          sign: 'The count is longer than your table says',
          means: 'Line drag, current, or it is deeper.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Two jigs of different weight', 'A watch', 'A place whose depth you know'],
      steps: [
        'Three counts with each jig.',
        'Say beforehand what the ratio will be.',
        'Drag each one foot: which do you feel better?'
      ],
      log: ['Six counts', 'The weight you would fish here, and why']
    }
  ]
};
