import { ft } from '../../items/draw';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { lowRun } from '../runs';

const out = (bait_x_m: number) =>
  deeperWith({ mass_kg: JIGS.half, start: { bait_x_m, slack_m: 0.03 } });
const far = out(ft(50));

export default {
  id: 'speed',
  order: 6,
  title: 'Speed',
  minutes: 6,
  about: 'There’s a pace that keeps bottom. It drops as the jig gets close.',
  place: deepPlace,
  objectives: ['Know what lifts a jig off flat bottom.', 'Slow down as the jig gets close.'],
  leaves_out: ['Swimming trailers.'],
  claims: [
    {
      says: ['The line pulls up as well as toward you.'],
      basis: { run: 'question', sign: 'lifted' }
    },
    {
      says: 'There’s a pace that keeps bottom.',
      basis: { run: 'slow', holds: { peak_height_m: [0, 0.02] } }
    },
    {
      says: 'It drops as the jig gets close.',
      basis: { most: 'peak_height_m', of: ['close-in', 'far-out'] }
    },
    {
      says: [
        'This one pulls up faster than the jig can sink.',
        'Towed faster than it sinks, it climbs, and bottom goes quiet.'
      ],
      basis: { run: 'question', sign: 'lifted' }
    },
    {
      says: 'Most of the pull goes along the bottom, not up.',
      basis: { run: 'question', holds: { peak_height_m: [0.04, 0.45], travel_m: [0.7, 1.4] } }
    },
    { says: 'Slower,', basis: { most: 'peak_height_m', of: ['close-in', 'close-slow'] } },
    { says: 'or heavier.', basis: { most: 'peak_height_m', of: ['close-in', 'close-heavy'] } },
    // At one pace the model has a high tip and a low one lift it alike.
    { says: 'Some guides lower the tip, too.', basis: 'practice' },
    {
      says: [
        'Trust the model that it climbs, not how high: guides see {a foot|30 cm} and more.',
        'Guides see it climb {a foot|30 cm} and more.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'Find where the trail turns to dots.',
    'find the pace where bottom goes quiet.',
    'The jig is close.'
  ],
  proofs: [
    { id: 'close-in', run: lowRun(out(ft(25)), sweep(60, 80, 1)) },
    { id: 'close-slow', run: lowRun(out(ft(25)), sweep(60, 80, 3)) },
    {
      id: 'close-heavy',
      run: lowRun(
        deeperWith({ mass_kg: JIGS.ounce, start: { bait_x_m: ft(25), slack_m: 0.03 } }),
        sweep(60, 80, 1)
      )
    },
    { id: 'far-out', run: lowRun(out(ft(80)), sweep(60, 80, 1)) }
  ],
  builds_on: ['one-foot', 'weight-and-depth'],
  cautions: [drillCautions.both],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Smooth bottom, a {1/2 oz|14 g} jig {50 ft|15 m} out, {3 ft|90 cm} of tip.',
      question: {
        ask: 'You sweep it in under a second. What does the jig do?',
        hint: 'The line pulls up as well as toward you.',
        run: lowRun(far, sweep(60, 87.5, 1)),
        options: [
          {
            id: 'stays',
            says: 'It slides along, only faster',
            holds: { peak_height_m: [0, 0.02] },
            reply:
              'This one pulls up faster than the jig can sink. Guides see it climb {a foot|30 cm} and more.'
          },
          {
            id: 'rises',
            says: 'It comes up off bottom',
            holds: { peak_height_m: [0.04, 0.6] },
            reply:
              'Right. Towed faster than it sinks, it climbs, and bottom goes quiet. Trust the model that it climbs, not how high: guides see {a foot|30 cm} and more.'
          },
          {
            id: 'flies',
            says: 'It comes up as far as it comes along',
            holds: { peak_height_m: [0.75, 1] },
            reply:
              'Most of the pull goes along the bottom, not up. Guides see it climb {a foot|30 cm} and more.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Find where the trail turns to dots.',
      demos: [
        { id: 'slow', caption: 'Slow.', run: lowRun(far, sweep(60, 87.5, 5)) },
        { id: 'quicker', caption: 'Quicker.', run: lowRun(far, sweep(60, 87.5, 2)) },
        { id: 'quickest', caption: 'Quickest.', run: lowRun(far, sweep(60, 87.5, 1)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['a-steady-pace', 'near-the-boat']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'The bottom goes quiet mid-move',
          means: 'Too fast. Slow down.',
          basis: { run: 'quickest', sign: 'lifted' }
        },
        {
          sign: 'You lose bottom close to the boat',
          means: 'The line is steeper. Slower, or heavier. Some guides lower the tip, too.',
          basis: { most: 'peak_height_m', of: ['close-in', 'far-out'] }
        },
        {
          sign: 'A drop after each move',
          means: 'You lifted it.',
          basis: { run: 'quickest', sign: 'lifted' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A tape measure', 'A watch'],
      steps: [
        'Sweep {3 ft|90 cm} in 5 seconds, in 3, in 1. Film it.',
        'Was it really 5, 3 and 1?',
        'On the water: find the pace where bottom goes quiet. Fish half that fast.'
      ],
      log: ['Times you meant, times you did', 'The pace that lost bottom']
    }
  ]
};
