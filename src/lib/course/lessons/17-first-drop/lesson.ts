import { ft } from '../../items/draw';
import type { Bite } from '../../../model';
import { held, inTurn, lift, pause } from '../../retrieves/moves';
import { castOut, deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { uprightRun } from '../runs';

const free = uprightRun(
  deeperWith({ mass_kg: JIGS.half, start: castOut(ft(45)) }),
  45,
  inTurn(held(45), pause(1)),
  25
);
const engaged = uprightRun(
  deeperWith({ mass_kg: JIGS.half, start: castOut(ft(45), 'closed') }),
  45,
  inTurn(held(45), pause(1)),
  30
);
/** A lift, and the rod lowered with the jig; a fish takes it while the line hangs semi-slack. */
const afterHop = (bites: Bite[]) =>
  uprightRun(
    deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 }, more: { bites } }),
    30,
    inTurn(lift(30, 50, 0.5), lift(50, 38, 1.2), pause(2)),
    3
  );

export default {
  id: 'first-drop',
  order: 17,
  title: 'The first drop',
  minutes: 7,
  about:
    'Many bites come before you ever feel bottom. Watch the line stop early, jump, or run off sideways.',
  place: deepPlace,
  objectives: ['Know a bite on the drop by the line.', 'Set on a bite on semi-slack line.'],
  leaves_out: ['Which fish suspend where.'],
  claims: [
    {
      says: 'it takes longer, and lands closer.',
      basis: { most: 'fall_s', of: ['engaged', 'free'], unknowns: 'drag' }
    },
    {
      says: 'Semi-slack line shows you a bite that your hand misses.',
      basis: 'practice'
    },
    {
      says: [
        'Many bites come before you ever feel bottom.',
        'You’re in free spool:',
        'the sweep just pulls line off the reel.',
        'Engage and come tight first.',
        'Tight, you feel it: a fish moves, a ledge stays dead.',
        'By 12 most have let go.',
        'Come tight now, and you feel which it is.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'When a fish takes it, reel down and set.',
    'If it runs off, reel down and set.',
    'It falls {20 ft|6 m} on slack line.',
    'It’s down:',
    'lower the rod.',
    'Watch the line stop early, jump, or run off sideways.'
  ],
  builds_on: ['hook-set', 'from-the-boat', 'stroke-and-fall'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Free spool. You count 12 to bottom here.',
      question: {
        ask: 'At 7 the line stops. What now?',
        hint: 'What else stops a falling jig, and how would you know?',
        practice: 'tight',
        run: free,
        options: [
          {
            id: 'sweep',
            says: 'Sweep hard, right away',
            reply:
              'You’re in free spool: the sweep just pulls line off the reel. Engage and come tight first.'
          },
          {
            id: 'tight',
            says: 'Engage the reel, come tight',
            reply: 'Right. Tight, you feel it: a fish moves, a ledge stays dead.'
          },
          {
            id: 'wait',
            says: 'Count on to 12, then check',
            reply: 'By 12 most have let go. Come tight now, and you feel which it is.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'free', caption: 'Free spool.', run: free },
        {
          id: 'engaged',
          caption: 'Engaged at the splash: it takes longer, and lands closer.',
          run: engaged
        },
        {
          id: 'taken',
          caption: 'Eaten on semi-slack line, after a hop.',
          run: afterHop([{ t_s: 2.6, kind: 'moving off' }])
        },
        { id: 'untouched', caption: 'The same hop, nobody home.', run: afterHop([]) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['taken-on-the-drop', 'bite-on-semi-slack']
    },
    {
      kind: 'feel',
      title: 'What you’d see',
      text: 'Semi-slack line shows you a bite that your hand misses.',
      cues: [
        {
          sign: 'It stops before your count',
          means:
            'Engage the reel, reel down. It moves or pulls back: sweep. It stays dead: a ledge.',
          basis: 'practice'
        },
        {
          sign: 'The line jumps or runs off',
          means: 'A fish. Reel down and sweep.',
          basis: { run: 'taken', sign: 'bite' }
        },
        {
          sign: 'It goes slack on your count',
          means: 'That’s bottom.',
          basis: { run: 'free', holds: { fall_s: [7, 15] }, unknowns: 'drag' }
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['A jig you’ve counted here', 'Bright line, or a bobber stop on it'],
      steps: [
        'Ten drops at one spot. Say your count before each.',
        'Spinning reel: open bail, line over a finger. Baitcaster: thumb light on the spool.'
      ],
      log: ['Ten counts', 'Early stops, and what each one was']
    }
  ]
};
