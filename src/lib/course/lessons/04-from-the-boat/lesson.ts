import { held, inTurn, pause } from '../../retrieves/moves';
import { waterWith, castOut, place, onTheWater } from '../fathomley';
import { uprightRun } from '../runs';

const closedReel = waterWith({ start: castOut(14, 'closed') });

export default {
  id: 'from-the-boat',
  order: 4,
  title: 'What the bottom is like from the boat',
  minutes: 12,
  about:
    'You will never see your jig. The line tells when it is down, and the count tells how deep. Here you watch falls that are hidden on the water, then count them unseen.',
  place,
  objectives: [
    'Know by the line when the jig is down.',
    'Say why a fall on a tight line ends nearer to you.'
  ],
  leaves_out: ['Finding a place to fish.', 'Echo sounders.'],
  builds_on: ['safety'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'You cast out and close the reel at once. The rod is held still and the line stays tight while the jig sinks.',
      question: {
        ask: 'Where does the jig land?',
        hint: 'Think of a weight on a string that is held at its upper end. Which way does it swing, and what stops it?',
        run: uprightRun(closedReel, 45, inTurn(held(45), pause(1)), 11),
        options: [
          {
            id: 'below',
            says: 'Below where it met the water',
            holds: { travel_m: [-0.5, 0.3] },
            reply:
              'That is a fall on a free line. A closed reel holds the jig at the length of the line, like a weight on a string.'
          },
          {
            id: 'nearer',
            says: 'A step nearer, about {length:1.5}',
            holds: { travel_m: [0.7, 2.8] },
            reply:
              'A tight line makes a pendulum of it: it swings in while it sinks, and you fish water you did not cast to.'
          },
          {
            id: 'far',
            says: 'Half the cast nearer',
            holds: { travel_m: [5, 9] },
            reply:
              'A pendulum as long as the line does not swing so far before it meets the bottom.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Two falls from the same cast. Watch where each ends.',
      demos: [
        {
          id: 'free',
          caption: 'The reel gives line: it goes down where it fell in.',
          run: uprightRun(waterWith({ start: castOut(14) }), 45, inTurn(held(45), pause(1)), 8)
        },
        {
          id: 'closed',
          caption: 'The reel is closed: it swings in.',
          run: uprightRun(closedReel, 45, inTurn(held(45), pause(1)), 11)
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Start when you are ready. Wait for the line, not for your patience.',
      challenges: ['count-it-down', 'count-a-lighter-one']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'The line runs, then stops and falls slack', means: 'It is down.' },
        { sign: 'It stops much too soon', means: 'A ledge, a fish, or the line was tight.' },
        {
          sign: 'It never goes slack',
          means: 'The line is tight: you do not know where the jig is.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A jig you know the weight of', 'A watch', 'Open water whose depth you know'],
      steps: [
        'Cast, and leave the reel open.',
        'Count aloud in seconds from the splash until the line goes slack.',
        'Three times at the same place.',
        'Write down depth, weight and count; that is your own table.'
      ],
      log: ['Depth, weight, three counts', 'How far the counts are apart']
    }
  ]
};
