import { ft } from '../../items/draw';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const CAST_M = ft(50);
/** Of a drifting boat, m/s: about half a foot a second, a fresh breeze on the side. */
const DRIFT_M_S = 0.15;
const drifting = (drift_m_s: number) =>
  lowRun(
    deeperWith({ start: { bait_x_m: CAST_M, slack_m: 0.05 }, more: { drift_m_s } }),
    sweep(60, 78.2, 4)
  );

export default {
  id: 'boat-position',
  order: 7,
  title: 'Boat, cast and wind',
  minutes: 6,
  about: 'The boat moves your jig, too. Know what it adds and what it takes.',
  place: deepPlace,
  objectives: [
    'Move a jig as far as you mean from a drifting boat.',
    'Know what a drifting boat adds to your drag, or takes from it.'
  ],
  leaves_out: ['Anchors.'],
  claims: [
    {
      says: ['The boat moves your jig, too.', 'Know what it adds and what it takes.'],
      basis: { most: 'travel_m', of: ['away', 'held', 'onto'] }
    },
    {
      says: 'Drift onto the jig and you drag slack.',
      basis: { most: 'travel_m', of: ['held', 'onto'] }
    },
    {
      says: 'Drift away and you drag it without trying.',
      basis: { most: 'travel_m', of: ['away', 'held'] }
    },
    {
      says: 'Drifting away adds to your sweep.',
      basis: { most: 'travel_m', of: ['away', 'held'] }
    },
    {
      says: 'Drifting onto it, the boat gives line back.',
      basis: { most: 'travel_m', of: ['held', 'onto'] }
    },
    {
      says: 'A held boat gives you all of it.',
      basis: { run: 'held', holds: { travel_m: [0.48, 0.68] } }
    },
    {
      says: [
        'This one gives back nearly all your tip takes.',
        'The boat gives back what your tip takes.'
      ],
      // A few inches of two feet.
      basis: { run: 'question', holds: { travel_m: [0.051, 0.15] } }
    }
  ],
  sets_up: [
    'The wind drifts you onto the jig, {half a foot|15 cm} a second.',
    'The boat drifts away from your jig.',
    'The boat drifts onto your jig.',
    'it gives you slack.',
    'Reel that up, jig still.',
    'Reel as you go, hold the boat on the trolling motor, or cast the other way.',
    'Bow into the wind, held on the trolling motor.',
    'Cast ahead or quartering into it, never over anyone.'
  ],
  builds_on: ['speed', 'slack'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'You sweep {2 ft|60 cm} in 4 seconds. The wind drifts you onto the jig, {half a foot|15 cm} a second.',
      question: {
        ask: 'How far does the jig come?',
        hint: 'Which way does the boat carry the whole rod?',
        run: drifting(DRIFT_M_S),
        options: [
          {
            id: 'more',
            says: 'Farther than the tip moved',
            holds: { travel_m: [0.7, 3] },
            reply: 'Drifting away adds to your sweep. Drifting onto it, the boat gives line back.'
          },
          {
            id: 'same',
            says: 'About {2 ft|60 cm}',
            holds: { travel_m: [0.48, 0.68] },
            reply: 'A held boat gives you all of it. This one gives back nearly all your tip takes.'
          },
          {
            id: 'little',
            says: 'Next to nothing',
            holds: { travel_m: [0.051, 0.15] },
            reply:
              'Right. The boat gives back what your tip takes. Reel as you go, hold the boat on the trolling motor, or cast the other way.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'held', caption: 'Held in place.', run: drifting(0) },
        { id: 'onto', caption: 'Drift onto the jig and you drag slack.', run: drifting(DRIFT_M_S) },
        {
          id: 'away',
          caption: 'Drift away and you drag it without trying.',
          run: drifting(-DRIFT_M_S)
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['drifting-away', 'drifting-onto']
    },
    {
      kind: 'feel',
      title: 'Where to put the boat',
      text: 'Bow into the wind, held on the trolling motor. Cast ahead or quartering into it, never over anyone.',
      cues: [
        {
          sign: 'Weight without moving the rod',
          means: 'You’re drifting away, or a fish has it. Reel down and test.',
          basis: { most: 'travel_m', of: ['away', 'held'] }
        },
        {
          sign: 'Sweep, and no weight',
          means: 'You’re drifting onto it. Reel first.',
          basis: { most: 'travel_m', of: ['held', 'onto'] }
        },
        {
          sign: 'A side wind puts a belly in the line',
          means:
            'It pulls the jig downwind. Cast straighter into the wind, tip low, or go heavier.',
          basis: 'practice'
        },
        {
          sign: 'Current',
          means:
            'Cast up-current, go heavier. Reel up what it brings you, feel the jig, then move.',
          basis: 'practice'
        },
        {
          sign: 'You drag down the slope',
          means:
            'Some put the boat shallow and cast deep: pulled uphill, it holds bottom. Guides differ.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A breezy day', 'A waypoint'],
      steps: [
        'Ten casts straight upwind, ten at 45°, ten across.',
        'Call each drag before you make it.',
        'Keep the angle you felt most.'
      ],
      log: ['Wind, angle, depth', 'Where you lost bottom']
    }
  ]
};
