import { fact } from './fact';

export const bottoms = [
  fact(
    'bottom-mud',
    'bottoms',
    'Dull and heavy, and it sucks when you start to pull. What’s down there?',
    [
      ['mud', 'Right. The first pull is the heaviest.'],
      ['sand', 'Sand is even from the first inch. This one stuck.'],
      ['rock', 'Rock knocks. This is dull.']
    ],
    'Mud holds a jig that has rested in it, so the start tells you.',
    ['mud', 'sand'],
    { sign: 'sucks at the start' }
  ),
  fact(
    'bottom-sand',
    'bottoms',
    'A faint, even hiss, and nothing else. What’s down there?',
    [
      ['sand', 'Right. Mud is even, too, but its first pull sticks.'],
      ['gravel', 'Gravel ticks: you feel single stones.'],
      ['brush', 'Brush loads and lets go. This stays even.']
    ],
    'Sand is all fine grains: nothing to knock on, nothing to stick in.',
    ['sand', 'gravel'],
    { sign: 'smooth' }
  ),
  fact(
    'bottom-gravel',
    'bottoms',
    'Fine, fast ticks. What’s down there?',
    [
      ['gravel', 'Right. Small stones, close together.'],
      ['boulders', 'Boulders sit feet apart: a long load, then a drop.'],
      ['mud', 'Mud doesn’t tick.']
    ],
    'The closer the ticks, the smaller the stones.',
    ['gravel', 'chunk rock'],
    { sign: 'knocks' }
  ),
  fact(
    'bottom-boulder',
    'bottoms',
    'A long load, then it drops free. What did you just cross?',
    [
      ['a boulder', 'Right. The longer the load, the bigger the rock.'],
      ['a weed patch', 'Weeds pop loose, and nothing drops.'],
      ['a soft hole', 'A hole drops without the load before it.']
    ],
    'The climb is the load, and the far side is the drop. Let it sit there.',
    ['boulders'],
    { sign: 'long loads' }
  ),
  fact(
    'bottom-brush',
    'bottoms',
    'It loads like a spring, then slips off. What’s down there?',
    [
      ['brush', 'Right. Ease off as it loads, and it slips off.'],
      ['chunk rock', 'Rock is hard: a knock or a dead stop.'],
      ['gravel', 'Gravel never loads up.']
    ],
    'If it feels springy, it’s wood or stems: they bend before they let go.',
    ['brush'],
    { sign: 'springs' }
  ),
  fact(
    'bottom-grass',
    'bottoms',
    'A mushy build-up, then a crisp release. What’s down there?',
    [
      ['grass', 'Right. Stems load up on it, then let go. Clean the jig after that.'],
      ['a stump', 'A stump is sudden. This built up.'],
      ['clay', 'Clay feels the same all the way.']
    ],
    'Slow down and you tell it from brush, which springs and lets go softly.',
    ['grass'],
    { sign: 'springs' }
  ),
  fact(
    'bottom-stump',
    'bottoms',
    'You drag into something solid. You tighten, and it doesn’t give. What do you do?',
    [
      ['ease off, and let it sit a while', 'Right. A pause there is worth a cast.'],
      ['pull harder and get it over at once', 'That’s how you hang it. Ease off first.'],
      [
        'reel down and sweep: it may be a fish',
        'You tightened, and nothing moved or pulled back: that’s wood or rock. Sweep and you’re hung.'
      ]
    ],
    'Pulling sets the hook in wood and wedges the head in rock. On slack it can fall free.'
  ),
  fact(
    'bottom-slow',
    'bottoms',
    'Which drag tells you most about the bottom?',
    [
      ['a slow one that keeps the jig down', 'Right. A jig that’s off bottom tells you nothing.'],
      ['a fast one that covers more of it', 'A fast jig leaves the bottom and touches less.'],
      ['a long one, however fast you pull it', 'Long only helps while the jig is down.']
    ],
    'What you don’t touch you don’t feel: miss a rock, and you cast past it all day.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  )
];
