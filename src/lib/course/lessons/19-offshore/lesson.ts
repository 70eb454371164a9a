import { ft } from '../../items/draw';
import { held, inTurn, pause, sweep } from '../../retrieves/moves';
import { castOut, drillCautions, JIGS, place, waterWith } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

/** 35 ft, where lessons near the boat have 12. */
const DEEP_M = ft(35);
const SHALLOW_M = ft(12);
const fallAt = (depth_m: number, mass_kg: number) =>
  uprightRun(
    waterWith({ depth_m, mass_kg, start: castOut(ft(45)) }),
    45,
    inTurn(held(45), pause(1)),
    45
  );
const dragAt = (mass_kg: number, duration_s: number) =>
  lowRun(
    waterWith({ depth_m: DEEP_M, mass_kg, start: { bait_x_m: ft(60), slack_m: 0.05 } }),
    sweep(60, 82.5, duration_s)
  );

export default {
  id: 'offshore',
  order: 19,
  title: 'Offshore',
  minutes: 9,
  about: 'Deep, the line gets steep, and a quick hand loses bottom sooner. Heavier and slower.',
  place: {
    name: place.name,
    note: 'An invented lake, about {35 ft|10.5 m} deep here.'
  },
  objectives: [
    'Drag and hop in {35 ft|10.5 m} and know it’s down.',
    'Know what deep water changes.'
  ],
  leaves_out: ['Lake maps.'],
  claims: [
    { says: ['The difference is your ledge.'], basis: 'practice' },
    {
      says: ['a quick hand loses bottom', 'it loses bottom.'],
      basis: { run: 'quick', sign: 'lifted', unknowns: 'drag' }
    },
    {
      says: 'it stays on bottom.',
      basis: { run: 'slow', sign: 'stayed down', unknowns: 'drag' }
    },
    {
      says: [
        'It doesn’t speed up on the way.',
        'Three times the depth is about three times the count.',
        'It doesn’t slow down on the way.'
      ],
      basis: {
        most: 'fall_s',
        of: ['question', 'fall-shallow'],
        times: [2.5, 3.5],
        unknowns: 'drag'
      }
    },
    {
      says: 'a quick hand loses bottom sooner.',
      basis: { most: 'peak_height_m', of: ['quick', 'quick-shallow'], unknowns: 'drag' }
    },
    {
      says: ['the line gets steep', 'Heavier and slower.'],
      basis: 'practice'
    }
  ],
  sets_up: [
    'Now it’s {35 ft|10.5 m}.',
    'Ten slow drags up or down the edge.',
    'Count, and lower the rod when you think it’s down.'
  ],
  proofs: [
    { id: 'fall-shallow', run: fallAt(SHALLOW_M, JIGS.ounce) },
    {
      id: 'quick-shallow',
      run: lowRun(
        waterWith({
          depth_m: SHALLOW_M,
          mass_kg: JIGS.threeQuarters,
          start: { bait_x_m: ft(60), slack_m: 0.05 }
        }),
        sweep(60, 82.5, 0.5)
      )
    }
  ],
  builds_on: ['weight-and-depth', 'speed', 'boat-position'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'In {12 ft|3.5 m} you counted about 4½ seconds: {1 oz|28 g}, small trailer. Now it’s {35 ft|10.5 m}.',
      question: {
        ask: 'How long is the count?',
        hint: 'How much deeper is it?',
        say: 'seconds',
        run: fallAt(DEEP_M, JIGS.ounce),
        timed: { run: fallAt(SHALLOW_M, JIGS.ounce), fall_s: 4.4 },
        options: [
          {
            id: 'same',
            says: '6 to 8 seconds',
            holds: { fall_s: [6, 8] },
            reply:
              'It doesn’t speed up on the way. Three times the depth is about three times the count.'
          },
          {
            id: 'triple',
            says: '12 to 15 seconds',
            holds: { fall_s: [12, 15] },
            reply: 'Right. Three times the depth is about three times the count.'
          },
          {
            id: 'minute',
            says: '25 to 45 seconds',
            holds: { fall_s: [25, 45] },
            reply:
              'It doesn’t slow down on the way. Three times the depth is about three times the count.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'slow', caption: 'Slow: it stays on bottom.', run: dragAt(JIGS.threeQuarters, 5) },
        { id: 'quick', caption: 'Quick: it loses bottom.', run: dragAt(JIGS.threeQuarters, 0.5) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['offshore-count', 'offshore-foot', 'offshore-hop']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'A sharp edge, then nothing',
          means: 'It’s off the ledge. Drop the tip, give line till it’s slack, and watch.',
          basis: 'practice'
        },
        {
          sign: 'On the graph',
          means:
            'Bait is a fuzzy cloud, fish are arcs or streaks near it, a ledge is a step. Hold downwind of it, bow into the wind.',
          basis: 'practice'
        },
        {
          sign: 'Nothing where the graph shows it',
          means: 'You landed short. Cast {20 ft|6 m} past it, free spool to bottom.',
          basis: 'practice'
        },
        {
          sign: 'No bottom after a sweep',
          means: 'Too quick, too light, or too close in.',
          basis: { run: 'quick', sign: 'lifted', unknowns: 'drag' }
        },
        {
          sign: 'Fish below a thermocline?',
          means: 'Often few: too little oxygen. Look above it first.',
          basis: 'practice'
        },
        {
          sign: 'A fish from deep water floats',
          means: 'Send it down with a descending device.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A ledge or hump in {20 to 35 ft|6 to 11 m}', '{3/4 oz|21 g} and {1 oz|28 g}'],
      steps: [
        'Count it on top and below. The difference is your ledge.',
        'Ten slow drags up or down the edge. Then ten hops.'
      ],
      log: ['Two depths, two counts', 'Which edge you felt, and how']
    }
  ]
};
