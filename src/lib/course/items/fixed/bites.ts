import { fact } from './fact';

export const bites = [
  fact(
    'bite-early-stop',
    'first-drop',
    'You’ve counted 14 all day. This time the line stops at 6. What now?',
    [
      [
        'reel down; sweep if it moves or pulls',
        'Right. A ledge stays dead; a fish moves or pulls back.'
      ],
      ['let it sit: it’s just shallower here', 'Maybe. A fish won’t wait while you decide.'],
      ['give it line and count once more', 'If it’s a fish, you just handed it slack.']
    ],
    'On slack line you can’t feel which it is. A ledge is there next cast, so many guides call it a fish until it isn’t.',
    ['fall']
  ),
  fact(
    'bite-weight-gone',
    'bites',
    'Boat held, jig still, line tight, and its weight goes. What happened?',
    [
      ['a fish has it and came toward you', 'Right. Reel until you feel it, then sweep.'],
      ['the jig is resting on a soft spot', 'A jig at rest doesn’t get lighter.'],
      ['it slid down a ledge on its own', 'You’d feel it land, and the weight comes back.']
    ],
    'Lost weight is as much a bite as added weight: something is carrying your jig.'
  ),
  fact(
    'bite-mush',
    'bites',
    'You’re dragging clean gravel. Which of these is most likely a fish?',
    [
      [
        'it turns to mush, and the ticks stop',
        'Right. Gravel doesn’t do that. Reel down and test it.'
      ],
      ['fast, light ticks, one after another', 'That’s the gravel: small stones, close together.'],
      [
        'one hard knock, and then ticks again',
        'A bigger stone. You’ve gone over it, and it’s gravel again.'
      ]
    ],
    'Know your bottom. What doesn’t belong there is a bite until you’ve tested it.',
    ['gravel']
  ),
  fact(
    'bite-set-cost',
    'bites',
    'It feels odd, and you’re not sure it’s a fish. What do you do?',
    [
      [
        'tighten gently, sweep if it pulls back',
        'Right. Brush gives, too. Only a fish pulls back.'
      ],
      ['sweep hard: it costs nothing at all', 'In rock a sweep hangs the jig. Test it first.'],
      ['hold still until it pulls once more', 'A fish may spit it by then. Test it now.']
    ],
    'A test costs you a second; a sweep into rock can cost the jig. In cold water some guides test longer.',
    [],
    'guides differ'
  )
];
