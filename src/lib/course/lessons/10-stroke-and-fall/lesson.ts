import { inTurn, lift, pause } from '../../retrieves/moves';
import { fathomley, place, onTheWater } from '../fathomley';
import { uprightRun } from '../runs';

export default {
  id: 'stroke-and-fall',
  order: 10,
  title: 'The stroke and the fall',
  minutes: 13,
  about:
    'In warm water, with active fish: a hard snap, and a fall that is under control. What makes or spoils it is the fall. On a tight line the jig swings in like a pendulum; on a following rod it falls where it is.',
  place,
  objectives: [
    'Snap the jig up, and follow it down on a semi-slack line.',
    'Say what a pendulum fall costs.'
  ],
  leaves_out: ['Setting the hook.'],
  builds_on: ['hops'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'You snap the rod up hard and leave it up.',
      question: {
        ask: 'How far has the jig come towards you when it lies again?',
        hint: 'There are two ways towards you: the snap, and what a tight line does to a jig that sinks. Add them.',
        run: uprightRun(fathomley, 15, lift(15, 75, 0.45), 5),
        options: [
          {
            id: 'little',
            says: 'Less than {length:1}',
            holds: { travel_m: [0, 1] },
            reply: 'It rises steeply, but then it hangs on a tight line.'
          },
          {
            id: 'much',
            says: 'Well over {length:1.5}',
            holds: { travel_m: [1.5, 3.4] },
            reply: 'Part of it is the snap. The rest is the fall: a tight line swings it in.'
          },
          {
            id: 'boat',
            says: 'Nearly to the boat',
            holds: { travel_m: [5, 10] },
            reply: 'One stroke does not empty the water.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same snap. First the rod stays up, then it follows.',
      demos: [
        {
          id: 'held',
          caption: 'The rod stays up.',
          run: uprightRun(fathomley, 15, lift(15, 75, 0.45), 5)
        },
        {
          id: 'follow',
          caption: 'The rod goes down with the jig.',
          run: uprightRun(
            fathomley,
            15,
            inTurn(lift(15, 75, 0.45), pause(0.1), lift(75, 20, 1.8)),
            4
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Snap, then give the line back at the pace at which the jig falls.',
      challenges: ['stroke', 'fall-on-a-following-rod']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'Weight all the way down', means: 'Too tight: it swings.' },
        { sign: 'Nothing at all on the way down', means: 'Too slack: you would miss a bite.' },
        { sign: 'Now and then a touch of weight', means: 'So it should be.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Room overhead: look up', 'A jig you know the fall of'],
      steps: [
        'Snap from nine to eleven. Follow down in as many seconds as it falls.',
        'Look at the line, not at the tip: it should never be quite straight.',
        'Five strokes, then rest the water.'
      ],
      log: ['Seconds of fall', 'Where it was bitten: up, down, or at rest']
    }
  ]
};
