import { ft } from '../../items/draw';
import { inTurn, lift, pause, reel, sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const firstLight = lowRun(
  deeperWith({ temperature_C: 9, mass_kg: JIGS.half, start: { bait_x_m: ft(50), slack_m: 0.05 } }),
  sweep(60, 71, 3)
);
const breezy = lowRun(
  deeperWith({ start: { bait_x_m: ft(60), slack_m: 0.2 }, more: { wind_m_s: 6 } }),
  inTurn(sweep(60, 60, 0.1), reel(0.2, 1), sweep(60, 79, 4))
);
const awake = uprightRun(
  deeperWith({ temperature_C: 16, start: { bait_x_m: ft(30), slack_m: 0.03 } }),
  30,
  inTurn(...[30, 41, 52].flatMap((from_deg) => [lift(from_deg, from_deg + 11, 0.25), pause(3)]))
);

export default {
  id: 'a-morning',
  order: 22,
  title: 'A morning on Fathomley Lake',
  minutes: 8,
  about: 'Three changes: first light, wind, then two warm weeks that wake the fish.',
  place: deepPlace,
  objectives: ['Pick a retrieve and say why.', 'Do three things well, one after another.'],
  leaves_out: ['Landing fish.'],
  claims: [
    {
      says: [
        'Three changes: first light, wind, then two warm weeks that wake the fish.',
        'Cold fish hardly move: keep it in front of them.',
        'That’s for warm fish.',
        'At {48 °F|9 °C} they hardly move: short drags, long waits.',
        'That’s for fish up off bottom, chasing.',
        'In water this cold they sit tight to the rock.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: ['fish near bottom chase bait.', 'Wind puts some belly back after you reel down.'],
  builds_on: ['season-and-mood', 'bite-or-bottom', 'snags', 'line-and-rod'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'First light, {48 °F|9 °C}, {20 ft|6 m} of rock.',
      question: {
        ask: 'How do you start?',
        hint: 'How far would a fish go for it?',
        practice: 'drags',
        run: firstLight,
        options: [
          {
            id: 'strokes',
            says: 'Long strokes, short waits',
            reply:
              'That’s for warm fish. At {48 °F|9 °C} they hardly move: short drags, long waits.'
          },
          {
            id: 'drags',
            says: 'Short, slow drags, long waits',
            reply: 'Right. Cold fish hardly move: keep it in front of them.'
          },
          {
            id: 'swim',
            says: 'Swim it, halfway up',
            reply:
              'That’s for fish up off bottom, chasing. In water this cold they sit tight to the rock.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      day: 16,
      demos: [
        { id: 'slow-drag', caption: 'First light: a short, slow drag.', run: firstLight },
        { id: 'in-wind', caption: 'Wind: reel down, then move.', run: breezy },
        { id: 'hops', caption: 'Active fish: three hops.', run: awake }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['first-light', 'wind-comes-up', 'they-wake']
    },
    {
      kind: 'feel',
      title: 'What you’d see',
      cues: [
        {
          sign: 'A belly in the line',
          means: 'Wind. Tip down, reel down, or go heavier.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['Your log so far'],
      steps: [
        'First: depth, temperature, wind, and what you pick because of them.',
        'Ten casts, then change one thing.',
        'Explain one choice to somebody.'
      ],
      log: ['One thing that worked, one to fix', 'When you’ll fish it again']
    }
  ]
};
