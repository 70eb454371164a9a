import { inTurn, reel, sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const FAR = 14;
const withSlack = (slack_m: number) => deeperWith({ start: { bait_x_m: FAR, slack_m } });
/** Three feet of tip in little more than half a second. */
const hard = sweep(60, 87.5, 0.6);
const rocks = deeperWith({
  bottom: { friction: 0.4, ground: { kind: 'chunk rock', seed: 3 } },
  start: { bait_x_m: FAR, slack_m: 0.03 }
});

export default {
  id: 'hook-set',
  order: 16,
  title: 'The hook set',
  minutes: 7,
  about:
    'Reel down until you feel it, then sweep, low and firm. Slack eats your sweep. On a tight line you can sweep right at the tap.',
  place: deepPlace,
  objectives: [
    'Reel down, then sweep, in time.',
    'Know when to set at once, when to reel first, and when not to set.'
  ],
  leaves_out: ['Fighting a big fish.', 'How tight to set your drag: ask your guide.'],
  claims: [
    { says: ['Line only stretches as far as it’s pulled.'], basis: 'practice' },
    {
      says: 'Slack eats your sweep.',
      basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'Reeled down, the same sweep gets there.',
      basis: { most: 'travel_m', of: ['reeled', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'Some guides sweep at the tap, some always reel down first. On a tight line both work.',
      basis: 'practice'
    },
    {
      says: ['Distance alone takes little.', 'Tight line passes nearly all on.'],
      basis: { run: 'question', holds: { travel_m: [0.8, 1.05] } }
    },
    {
      says: ['A free jig pulls back less than half a pound.', 'A free jig doesn’t pull that hard.'],
      basis: { run: 'question', holds: { pull_N: [0, 2.22] } }
    },
    {
      says: 'Slack eats your sweep, so reel down first.',
      basis: { most: 'travel_m', of: ['reeled', 'slack'], unknowns: 'drag' }
    },
    {
      says: [
        'On a tight line you can sweep right at the tap.',
        'A fish weighs pounds: then mono stretches, and you sweep longer.',
        'A fish weighs pounds and stretches it like that.'
      ],
      basis: 'practice'
    }
  ],
  builds_on: ['bite-or-bottom', 'slack'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'No fish yet: a free jig, line tight, 12-pound mono, {60 ft|18 m} out. You sweep {3 ft|90 cm} of tip, hard.',
      question: {
        ask: 'How much of your sweep gets to the jig?',
        hint: 'How hard does a free jig pull back? Line only stretches as far as it’s pulled.',
        run: lowRun(
          deeperWith({
            line: { material: 'nylon', diameter_m: 0.00032 },
            start: { bait_x_m: 18, slack_m: 0.03 }
          }),
          hard
        ),
        options: [
          {
            id: 'all',
            says: 'Nearly all of it',
            holds: { travel_m: [0.8, 1.05] },
            reply:
              'Right. A free jig pulls back less than half a pound. Slack eats your sweep, so reel down first. A fish weighs pounds: then mono stretches, and you sweep longer.'
          },
          {
            id: 'half',
            says: 'About half: mono stretches',
            holds: { travel_m: [0.3, 0.6] },
            reply:
              'A fish weighs pounds and stretches it like that. A free jig doesn’t pull that hard. Slack eats your sweep.'
          },
          {
            id: 'none',
            says: 'Next to nothing, that far out',
            holds: { travel_m: [-0.1, 0.2] },
            reply:
              'Distance alone takes little. Tight line passes nearly all on. Slack eats your sweep.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One sweep, three lines. Reeled down, the same sweep gets there.',
      demos: [
        { id: 'slack', caption: 'Slack in the line.', run: lowRun(withSlack(0.6), hard) },
        {
          id: 'reeled',
          caption: 'Reeled down, then swept.',
          run: lowRun(withSlack(0.6), inTurn(sweep(60, 60, 0.1), reel(0.5, 1), hard))
        },
        { id: 'tight', caption: 'Tight all along.', run: lowRun(withSlack(0.03), hard) },
        { id: 'rock', caption: 'A rock: don’t set.', run: lowRun(rocks, sweep(60, 90, 6)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Slack line and a tap. Then rock on the way, and some casts with no fish.',
      challenges: ['reel-down-and-sweep', 'set-on-fish-not-rock']
    },
    {
      kind: 'feel',
      title: 'Set or don’t',
      text: 'Some guides sweep at the tap, some always reel down first. On a tight line both work.',
      cues: [
        {
          sign: 'A tap, line tight',
          means: 'Sweep now, or reel a turn and sweep. Guides differ.',
          basis: 'practice'
        },
        {
          sign: 'Line jumps, slack in it',
          means: 'Reel down first: slack eats your sweep.',
          basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
        },
        {
          sign: 'Knocks while you drag',
          means: 'Rock. Stop the rod: rock stops too.',
          basis: { run: 'rock', sign: 'knocks' }
        },
        {
          sign: 'Hooked up',
          means:
            'You set your reel drag at the ramp. Rod low, steady pull. Net it, then pliers; a flat barb comes out easy. Never swing a fish at anyone.',
          basis: 'practice'
        },
        {
          sign: 'Someone in line with your rod',
          means: 'Don’t set. A jig that pulls free comes fast.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A spring scale tied to a post. Nobody holds it.',
      needs: ['Your rod, no hook', 'A spring scale, tied to a post', 'Glasses for everyone'],
      steps: [
        'Everyone behind you. Sweep on tight line, firm, not hard. Read the scale.',
        'Give it {2 ft|60 cm} of slack and sweep.',
        'Same slack: reel down, then sweep. Ten times.'
      ],
      log: ['Three readings', 'How often you swept into slack']
    }
  ]
};
