import { ft } from '../../items/draw';
import { held, inTurn, pause, sweep } from '../../retrieves/moves';
import { castOut, deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const start = { bait_x_m: ft(45), slack_m: 0.03 };
const light = lowRun(deeperWith({ mass_kg: JIGS.quarter, start }), sweep(60, 87.5, 2));
const heavy = lowRun(deeperWith({ mass_kg: JIGS.ounce, start }), sweep(60, 87.5, 2));
const fall = (mass_kg: number) =>
  uprightRun(deeperWith({ mass_kg, start: castOut(ft(45)) }), 45, inTurn(held(45), pause(1)), 35);

export default {
  id: 'weight-and-depth',
  order: 5,
  title: 'Weight and depth',
  minutes: 8,
  about: 'Pick by depth and wind, then check with a count.',
  place: deepPlace,
  objectives: [
    'Pick a weight for a depth and say why.',
    'Expect a longer count for a lighter jig or deeper water.'
  ],
  leaves_out: ['Heads and trailers: the lesson on rigging.'],
  claims: [
    {
      says: ['What sinks slowly needs little to stay up.'],
      basis: { most: 'contact', of: ['heavy', 'light'] }
    },
    {
      says: 'It sinks slower, so the same pull lifts it.',
      basis: { run: 'light', holds: { contact: [0, 0.88] } }
    },
    {
      says: ['The weight decides if it stays down.'],
      basis: { most: 'contact', of: ['heavy', 'light'] }
    },
    {
      says: ['It sinks about half as fast, so it lifts at half the speed.'],
      basis: {
        most: 'fall_s',
        of: ['fall-quarter', 'fall-ounce'],
        times: [1.7, 2.4],
        unknowns: 'drag'
      }
    },
    { says: 'it lifts.', basis: { run: 'light', sign: 'lifted' } },
    { says: 'it holds bottom better.', basis: { most: 'contact', of: ['heavy', 'light'] } },
    {
      says: 'The tip decides how far it comes.',
      basis: { alike: 'travel_m', of: ['heavy', 'light'], unknowns: 'drag' }
    }
  ],
  sets_up: [
    'Lower the rod when you think it’s there.',
    'In {10 ft|3 m}, drag {1/4 oz|7 g} {2 ft|60 cm} slowly: about 6 seconds.',
    'Pick by depth and wind, then check with a count.'
  ],
  proofs: [
    { id: 'fall-quarter', run: fall(JIGS.quarter) },
    { id: 'fall-ounce', run: fall(JIGS.ounce) }
  ],
  builds_on: ['from-the-boat', 'one-foot'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: '{45 ft|14 m} out in {20 ft|6 m}, you drag {1 oz|28 g}, about {3 ft|90 cm} of tip, quick. Now you tie on {1/4 oz|7 g}.',
      question: {
        ask: 'Same move. What does it do?',
        hint: 'What sinks slowly needs little to stay up.',
        run: light,
        options: [
          {
            id: 'stays',
            says: 'It stays on bottom all the way',
            holds: { contact: [0.92, 1] },
            reply: 'It sinks slower, so the same pull lifts it.'
          },
          {
            id: 'lifts',
            says: 'It’s off bottom for part of the move',
            holds: { contact: [0, 0.88] },
            reply: 'Right. It sinks about half as fast, so it lifts at half the speed.'
          },
          {
            id: 'back',
            says: 'It doesn’t come along',
            holds: { travel_m: [-0.1, 0.1] },
            reply: 'The tip decides how far it comes. The weight decides if it stays down.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'light', caption: '{1/4 oz|7 g}: it lifts.', run: light },
        { id: 'heavy', caption: '{1 oz|28 g}: it holds bottom better.', run: heavy }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['thirty-feet-down', 'light-and-slow', 'heavy-in-deep-water']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'Little to feel between two rocks',
          means: 'Too light for the depth or wind, or too fast.',
          basis: { most: 'contact', of: ['heavy', 'light'] }
        },
        {
          sign: 'It wedges a lot',
          means: 'Too heavy, or the line is too flat.',
          basis: 'practice'
        },
        {
          sign: 'The count runs long',
          means: 'It’s deeper, current has your line, or it isn’t running free.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'weights',
      title: 'Pick a weight'
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: [
        'Your rod, and two jigs of different weight',
        'A watch',
        'Water you know the depth of'
      ],
      steps: [
        'Say first: how many seconds more will the light one take?',
        'Three counts with each.',
        'Drag each one foot. Which do you feel better?'
      ],
      log: ['Six counts', 'The weight you’d fish here, and why']
    }
  ]
};
