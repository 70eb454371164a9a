import { fact } from './fact';

export const bottoms = [
  fact(
    'bottom-mud',
    'bottoms',
    'Dull and heavy, and it sucks at the start. Over what?',
    [
      ['mud, which holds what has lain in it', 'Yes. The first pull is the heaviest.'],
      ['sand, which hisses evenly and finely', 'Sand is even from the first inch.'],
      ['rock, which knocks at irregular times', 'Rock knocks; this is dull.']
    ],
    'Mud holds a bait that has rested: the start is the sign.',
    ['mud', 'sand']
  ),
  fact(
    'bottom-sand',
    'bottoms',
    'An even, faint hiss and nothing else. Over what?',
    [
      ['sand, fine and even all the way', 'Yes.'],
      ['gravel, with its quick sharp ticks', 'Gravel ticks: single grains can be felt.'],
      ['brush, which loads up and lets go', 'Stems load and let go. This is even.']
    ],
    'The grain sets the pitch: the finer and the faster, the higher.',
    ['sand', 'gravel'],
    { sign: 'smooth' }
  ),
  fact(
    'bottom-gravel',
    'bottoms',
    'Fine, rapid ticks. Over what?',
    [
      ['gravel, whose stones tick one by one', 'Yes.'],
      ['boulders, with long loads and drops', 'Boulders are feet apart: long load, then a drop.'],
      ['mud, which is dull and heavy at first', 'Mud does not tick.']
    ],
    'Small stones come one after another; big ones seldom.',
    ['gravel', 'chunk rock'],
    { sign: 'knocks' }
  ),
  fact(
    'bottom-boulder',
    'bottoms',
    'A long load, then the weight drops free. Over what?',
    [
      ['a boulder that the jig climbed over', 'Yes: up one side, off the other.'],
      ['a patch of weed that tore off slowly', 'Weed lets go crisply, without a fall.'],
      ['a soft hole in an even sandy bottom', 'A hole is a drop without the load before it.']
    ],
    'Climb and drop is a stone; how long it takes tells how big.',
    ['chunk rock'],
    { sign: 'knocks' }
  ),
  fact(
    'bottom-brush',
    'bottoms',
    'It loads like a spring and slips off. Over what?',
    [
      ['brush: a branch bends, then lets go', 'Yes. Slacken as it loads, and it slips off.'],
      ['chunk rock: it wedges, then is stuck', 'Rock is hard: a knock or a stop.'],
      ['gravel: it ticks faster and faster', 'Gravel never loads up.']
    ],
    'A spring in the hand is wood or stems.',
    ['brush'],
    { sign: 'springs' }
  ),
  fact(
    'bottom-grass',
    'bottoms',
    'A mushy build-up and a crisp release. Over what?',
    [
      ['grass: stalks gather, then they part', 'Yes. Clean the jig after it.'],
      ['stump: a solid thud, then a sudden stop', 'A stump is sudden. This builds up.'],
      ['clay: smooth, firm and a bit tacky', 'Clay is the same all the way.']
    ],
    'Grass builds up and lets go; a stump stops you.',
    ['grass'],
    { sign: 'springs' }
  ),
  fact(
    'bottom-stump',
    'bottoms',
    'A solid thud, and it stops. What do you do?',
    [
      ['let it lie: fish sit beside stumps', 'Yes. A pause there is worth a cast.'],
      ['pull harder, to get over it at once', 'That is how it is hung. Slack, then a small hop.'],
      ['reel in, as it must be snagged now', 'A stop is no snag until shaking fails.']
    ],
    'A sudden stop is a place, not a nuisance.'
  ),
  fact(
    'bottom-slow',
    'bottoms',
    'Which drag tells most about the bottom?',
    [
      ['a slow one, with the bait kept down', 'Yes. What flies feels nothing.'],
      ['a fast one, as it meets more of it', 'A fast bait leaves the bottom and meets less.'],
      ['a long one, at any speed you like', 'Length helps only while it is down.']
    ],
    'Slow drags tell bottoms apart; fast ones tell your speed.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  )
];
