import { sweep } from '../../retrieves/moves';
import { fathomley, place, onTheWater } from '../fathomley';
import { lowRun } from '../runs';

export default {
  id: 'your-hands-ruler',
  order: 2,
  title: 'Your hand’s ruler',
  minutes: 15,
  about:
    'A hand has a ruler of its own, and it is marked wrong. What matters is to know by how much. You say how far the jig went before you look, again and again, and the trainer works out your ruler from it.',
  place,
  objectives: [
    'Say how far the jig went before you see it.',
    'Know whether your hand goes too far, too short, or unevenly.'
  ],
  leaves_out: ['Why the line sometimes swallows the move: lesson 3.'],
  builds_on: ['one-foot'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'Your hand turns the rod’s handle by about a hand’s width. At the tip of a rod of {length:2} that is a sweep of about {length:0.5}.',
      question: {
        ask: 'How far does the jig come, slowly pulled?',
        hint: 'Turn a pencil on the table by its end. Which part moves most, and which part holds the line?',
        run: lowRun(fathomley, sweep(60, 76, 4)),
        options: [
          {
            id: 'hand',
            says: 'About {length:0.1}, as far as the hand',
            holds: { travel_m: [0.02, 0.2] },
            reply:
              'It feels so. But the rod is a lever: the tip goes many times as far as the hand.'
          },
          {
            id: 'tip',
            says: 'About {length:0.5}, as far as the tip',
            holds: { travel_m: [0.4, 0.66] },
            reply:
              'The jig follows the tip. The hand feels a hand’s width, and that is where most rulers go wrong.'
          },
          {
            id: 'more',
            says: 'About {length:1}',
            holds: { travel_m: [0.85, 1.4] },
            reply: 'It never gets more line than the tip takes up.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One foot as hands mean it, and as it is.',
      demos: [
        {
          id: 'meant',
          caption: 'What a hand often does that means one foot.',
          run: lowRun(fathomley, sweep(60, 80, 2))
        },
        { id: 'is', caption: 'One foot.', run: lowRun(fathomley, sweep(60, 70, 2.5)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'From here on the jig is hidden while you move. Say how far it went, then look.',
      challenges: ['one-foot-half-seen', 'two-feet-unseen', 'one-foot-unseen']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: '“That was about a foot”', means: 'Look at the tape before you believe it.' },
        {
          sign: 'Two tries feel alike, and the jig says otherwise',
          means: 'Your hand is uneven, its spread is wide: go slower.'
        },
        {
          sign: 'All tries are too far by about the same',
          means: 'Your hand is biased: mean less.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: [
        'Your rod, no hook on the line',
        'A tape measure along the tip’s way',
        'Somebody to read it, or a phone that films it'
      ],
      steps: [
        'Mean one foot, eyes shut, ten times.',
        'Then mean two feet, ten times.',
        'Read all twenty. Halve nothing, leave nothing out.'
      ],
      log: ['Twenty numbers', 'The mean for each, and how far they are apart']
    }
  ]
};
