import { fact } from './fact';

export const bites = [
  fact(
    'bite-semi-slack',
    'bites',
    'You hopped it and the line hangs semi-slack. What do you watch?',
    [
      ['the line, where it meets the water', 'Right. It jumps before you feel a thing.'],
      ['the rod tip, since it bends first', 'On semi-slack line the tip is the last to know.'],
      ['the sonar, for fish that move in', 'Even with live sonar, the line tells you first.']
    ],
    'Slack hides a bite from your hand, not from your eye. Watch where line meets water.',
    ['hop']
  ),
  fact(
    'bite-early-stop',
    'bites',
    'You’ve counted 14 all day. This time the line stops at 6. What now?',
    [
      [
        'reel down; sweep if it moves or pulls',
        'Right. A ledge stays dead, and it’s there next cast.'
      ],
      ['let it sit: it’s just shallower here', 'Maybe. A fish won’t wait while you decide.'],
      ['give it line and count once more', 'If it’s a fish, you just handed it slack.']
    ],
    'An early stop is a ledge, a fish or a tight line. Reel down. It moves or pulls back: sweep. It stays dead: a ledge.',
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
    'bite-sweep',
    'bites',
    'You think it’s a bite, and there’s slack in the line. How do you set?',
    [
      ['reel down until tight, then sweep', 'Right. Slack first, then the sweep.'],
      ['sweep the rod the second it taps', 'On slack you move line, not the hook.'],
      ['wait until the fish hooks itself', 'It’ll spit it before it hooks itself.']
    ],
    'A sweep goes into the slack before it gets to the hook. On a tight line you can sweep right at the tap; some guides reel down every time.',
    ['slow drag', 'slack drag'],
    { most: 'travel_m' }
  ),
  fact(
    'bite-mush',
    'bites',
    'The jig feels like mush, and you know it’s gravel down there. What is it?',
    [
      ['maybe a fish: reel down and test it', 'Right. Sweep if it moves or pulls back.'],
      [
        'loose weeds: shake the rod to clear',
        'It may be. Reel down and test first: it may be a fish.'
      ],
      ['softer gravel: keep on dragging it', 'All gravel ticks. Mush doesn’t belong there.']
    ],
    'Know your bottom. What doesn’t belong there is a bite until you’ve tested it.',
    ['gravel']
  ),
  fact(
    'bite-set-cost',
    'bites',
    'It feels odd, and you’re not sure it’s a fish. What do you do?',
    [
      ['reel down, test, sweep if it moves', 'Right. Brush gives, too. Only a fish pulls back.'],
      ['sweep hard: it costs nothing at all', 'In rock a sweep hangs the jig. Test it first.'],
      ['hold still until it pulls once more', 'A fish may spit it by then. Test it now.']
    ],
    'Reel down and test gently. Sweep if it moves or pulls back. In cold water some guides test longer.',
    [],
    'guides differ'
  )
];
