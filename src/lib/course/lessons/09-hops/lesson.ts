import { inTurn, lift, pause } from '../../retrieves/moves';
import { fathomley, place, onTheWater } from '../fathomley';
import { uprightRun } from '../runs';

export default {
  id: 'hops',
  order: 9,
  title: 'Hops',
  minutes: 15,
  about:
    'A hop is a short lift and a fall, and then a rest. Height comes from how quickly you lift, not from how far. Three hops, evenly or unevenly spaced, upright or to the side.',
  place,
  objectives: [
    'Hop the jig to a height you named.',
    'Make three hops with even rests, and with uneven ones.'
  ],
  leaves_out: ['Hard strokes: lesson 10.'],
  builds_on: ['the-clock', 'slack'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The line is just tight, the rod at ten.',
      question: {
        ask: 'You lift by less than half an hour, in a quarter of a second. How high does the jig rise?',
        hint: 'How far does the tip go in so small a turn? The line cannot give the jig any more than that.',
        run: uprightRun(fathomley, 30, lift(30, 42, 0.25)),
        options: [
          {
            id: 'not',
            says: 'It hardly leaves the bottom',
            holds: { peak_height_m: [0, 0.03] },
            reply: 'A slow lift of that size would not. A quick one does.'
          },
          {
            id: 'hand',
            says: 'About a hand: {length:0.13}',
            holds: { peak_height_m: [0.05, 0.35] },
            reply:
              'A small, quick lift is a hop. Most hands do three times as much, and fish over the heads of the fish.'
          },
          {
            id: 'knee',
            says: 'Up to the knee: {length:0.6}',
            holds: { peak_height_m: [0.45, 1] },
            reply: 'That takes a lift of an hour and more.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One lift, quick and slow; then three hops.',
      demos: [
        {
          id: 'quick',
          caption: 'A quarter of a second.',
          run: uprightRun(fathomley, 30, lift(30, 42, 0.25))
        },
        {
          id: 'slow',
          caption: 'Two seconds over the same way.',
          run: uprightRun(fathomley, 30, lift(30, 42, 2))
        },
        {
          id: 'three',
          caption: 'Three hops, each with a rest.',
          run: uprightRun(
            fathomley,
            30,
            inTurn(lift(30, 42, 0.25), pause(3), lift(42, 53, 0.25), pause(3), lift(53, 63, 0.25))
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'One hop first. Then three; let the jig lie between them.',
      challenges: [
        'one-hop',
        'three-hops-even',
        'three-hops-uneven',
        'three-hops-sideways',
        'three-hops-sideways-uneven'
      ]
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'A tick after each hop', means: 'It is back on the bottom.' },
        { sign: 'No tick', means: 'It did not leave, or it has not landed.' },
        { sign: 'The line goes slack and stays so', means: 'Lower the rod less, or reel up.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['Your rod, no hook on the line', 'A tape along the tip’s arc'],
      steps: [
        'Quarter-second lifts of a hand’s width at the tip, ten times.',
        'Then on the water: one hop, count until you feel it land.',
        'Three hops with equal rests; then short, long.'
      ],
      log: ['Count from hop to landing', 'Which rhythm was bitten, if any']
    }
  ]
};
