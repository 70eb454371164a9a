import { sweep } from '../../retrieves/moves';
import { waterWith, place, onTheWater, cautions } from '../fathomley';
import { lowRun } from '../runs';

const twoStones = waterWith({
  bottom: {
    friction: 0.4,
    stones: [
      { x_m: 11.7, width_m: 0.24, height_m: 0.05 },
      { x_m: 11.35, width_m: 0.3, height_m: 0.08 }
    ]
  },
  start: { bait_x_m: 12, slack_m: 0.03 }
});

export default {
  id: 'feeling-rocks',
  order: 7,
  title: 'Feeling rocks',
  minutes: 13,
  about:
    'Rock piles hold fish, and hands miss them. Often the pile was there and the jig flew over it. Slow over cover: then a rock knocks, loads, and lets go.',
  place,
  objectives: ['Touch every stone on the way.', 'Say why a missed rock pile may be a fast hand.'],
  leaves_out: ['Hanging up: lesson 17.'],
  builds_on: ['speed'],
  cautions: [...onTheWater, cautions.snag],
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'Two low stones lie on the way.',
      question: {
        ask: 'You sweep {length:1} in less than a second. How much of its way does the jig keep contact?',
        hint: 'What does a stone do to something that meets it fast? And how long does that take to sink again?',
        run: lowRun(twoStones, sweep(60, 90.5, 0.9)),
        options: [
          {
            id: 'most',
            says: 'Nearly all of it',
            holds: { contact: [0.85, 1] },
            reply: 'So it seems, since nothing knocks. That nothing knocks is the trouble.'
          },
          {
            id: 'half',
            says: 'Less than two thirds',
            holds: { contact: [0, 0.7] },
            reply:
              'It is thrown off the first stone and flies. From the boat that feels like a clean, empty bottom.'
          },
          {
            id: 'still',
            says: 'It stays behind the first stone',
            holds: { travel_m: [-0.1, 0.3] },
            reply: 'A low stone does not stop it.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same stones, slowly and fast.',
      demos: [
        {
          id: 'slow',
          caption: '{time:8}: every stone is felt.',
          run: lowRun(twoStones, sweep(60, 90.5, 8))
        },
        {
          id: 'fast',
          caption: 'Under a second: silence.',
          run: lowRun(twoStones, sweep(60, 90.5, 0.9))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Touch them all, unseen. Then over one boulder.',
      challenges: ['three-stones-unseen', 'over-one-boulder']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'A knock', means: 'It met a stone.' },
        { sign: 'A load that grows, then a drop', means: 'It climbed one and fell behind it.' },
        { sign: 'Long nothing, then a thud', means: 'It flew, and landed.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A jig you can spare', 'A place with known rock'],
      steps: [
        'Drag the same way three times: slow, slower, slowest.',
        'Count the knocks each time.',
        'If the slowest counts most, you had been flying.'
      ],
      log: ['Knocks at each pace', 'Depth, weight, kind of rock']
    }
  ]
};
