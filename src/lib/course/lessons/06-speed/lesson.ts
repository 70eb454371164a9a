import { sweep } from '../../retrieves/moves';
import { waterWith, JIGS, place, onTheWater } from '../fathomley';
import { lowRun } from '../runs';

const threeEighths = waterWith({ mass_kg: JIGS.threeEighths });

export default {
  id: 'speed',
  order: 6,
  title: 'Speed: why it leaves the bottom',
  minutes: 12,
  about:
    'A slow pull never lifts a jig off a smooth flat bottom, however hard. A fast one always does. Between them lies a speed limit, and it drops as the jig comes near.',
  place,
  objectives: ['Say why every lift is a matter of speed.', 'Slow down as the jig comes near.'],
  leaves_out: ['Lift from skirt and trailer.'],
  builds_on: ['one-foot', 'weight-and-depth'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'A smooth bottom, {weight:0.01063} of jig, {length:1} of tip.',
      question: {
        ask: 'You take one second for it. What does the jig do?',
        hint: 'The line pulls upward as well as towards you. Which is faster: that pull, or a jig that sinks?',
        run: lowRun(threeEighths, sweep(60, 89, 1)),
        options: [
          {
            id: 'stays',
            says: 'It slides along the bottom, only faster',
            holds: { peak_height_m: [0, 0.02] },
            reply:
              'Up to a limit it does. {length:1} in a second is beyond it: the line pulls upward faster than the jig can fall.'
          },
          {
            id: 'rises',
            says: 'It rises by a hand or two',
            holds: { peak_height_m: [0.04, 0.6] },
            reply:
              'It is towed faster than its fall speed allows at this angle of the line. So it climbs, and you feel nothing of the bottom.'
          },
          {
            id: 'flies',
            says: 'It comes up to the surface',
            holds: { peak_height_m: [1.5, 4] },
            reply: 'The sweep ends long before that.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Equal sweeps, unequal times. Find where the solid mark breaks up.',
      demos: [
        { id: 'five', caption: '{time:5}.', run: lowRun(threeEighths, sweep(60, 89, 5)) },
        { id: 'two', caption: '{time:2}.', run: lowRun(threeEighths, sweep(60, 89, 2)) },
        { id: 'one', caption: '{time:1}.', run: lowRun(threeEighths, sweep(60, 89, 1)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Keep a pace. Then keep contact close to the boat, where the line is steep.',
      challenges: ['a-steady-pace', 'near-the-boat']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        {
          sign: 'The bottom goes quiet in the middle of a move',
          means: 'You are over the limit: slow down.'
        },
        {
          sign: 'Contact is lost near the boat',
          means: 'The line is steeper: slower, rod lower, or heavier.'
        },
        { sign: 'A drop after each move', means: 'You lifted it.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Your rod, no hook on the line', 'A tape, a watch'],
      steps: [
        'Sweep {length:1} in five seconds, then in three, then in one.',
        'Film it, or have somebody time it: were they?',
        'On the water: find the pace at which the bottom goes quiet, and stay below half of it.'
      ],
      log: [
        'Three times meant, three times done',
        'The pace at which you lost the bottom, and the weight'
      ]
    }
  ]
};
