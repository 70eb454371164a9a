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
const shaken = uprightRun(
  deeperWith({ temperature_C: 17, start: { bait_x_m: ft(40), slack_m: 1.2 } }),
  30,
  inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3)))
);

export default {
  id: 'season-and-mood',
  order: 21,
  title: 'Season and mood',
  minutes: 10,
  about: 'The season says where to start. Then let the fish’s mood correct you.',
  place: deepPlace,
  objectives: [
    'Pick a retrieve for what fish show, and say why.',
    'Do nothing for as long as it takes.'
  ],
  leaves_out: ['Color and scent.'],
  claims: [
    {
      says: 'the rod works, the jig hardly comes.',
      basis: { run: 'shake', holds: { travel_m: [0, 0.3] } }
    },
    {
      says: [
        'The season says where to start.',
        'Then let the fish’s mood correct you.',
        'They’re there, and looking: give them time to eat.',
        'They’ve already turned down a moving jig.',
        'Some guides do speed up; try the wait first.',
        'They’re here, and looking: stay, and slow down.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'A spot that holds fish',
    'Rest 10 seconds or more between them.',
    'Do nothing for 12 seconds or more.'
  ],
  builds_on: ['season-map', 'slack'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: '{62 °F|17 °C}. On your sonar, fish follow your jig, then turn away.',
      question: {
        ask: 'What do you change?',
        hint: 'Do they chase it, or only look?',
        practice: 'smaller',
        run: shaken,
        options: [
          {
            id: 'bigger',
            says: 'Bigger moves, shorter waits',
            reply:
              'They’ve already turned down a moving jig. Some guides do speed up; try the wait first.'
          },
          {
            id: 'smaller',
            says: 'Smaller moves, longer waits',
            reply: 'Right. They’re there, and looking: give them time to eat.'
          },
          {
            id: 'spot',
            says: 'Another spot, same retrieve',
            reply: 'They’re here, and looking: stay, and slow down.'
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
          caption: 'Shake in place: the rod works, the jig hardly comes.',
          run: shaken
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
          sign: 'They follow it, or peck at it',
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
          sign: 'One here, one there',
          means: 'Quicker drags, and keep moving.',
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
        'One cast in ten: do nothing for a full minute.'
      ],
      log: ['Temperature, spot, retrieve, cadence', 'What you changed, and what it did']
    }
  ]
};
