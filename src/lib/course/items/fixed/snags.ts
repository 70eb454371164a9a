import { fact } from './fact';

export const snags = [
  fact(
    'snag-first',
    'snags',
    'You’re hung up. What’s the first thing you do?',
    [
      ['stop, give slack, shake the rod tip', 'Right. Most snags let go of slack line.'],
      ['pull hard before it works in deeper', 'Pulling is what drives it deeper.'],
      ['cut it off, and tie on another jig', 'You haven’t tried to free it yet.']
    ],
    'On slack line the jig’s own weight can back it out. Then bow and snap, then the boat over it, then past it.',
    ['chunk rock']
  ),
  fact(
    'snag-angle',
    'snags',
    'Shaking and a bow and snap didn’t free it. What’s next?',
    [
      ['boat over it, then past it: a new angle', 'Right. It comes out the side it went in.'],
      ['same angle as before, with a lot more pull', 'From the same side it only wedges tighter.'],
      ['let it sit a few minutes and wait', 'A wedged jig doesn’t let go on its own.']
    ],
    'The way out is the way in. Change the angle before you add pull.',
    ['chunk rock']
  ),
  fact(
    'snag-bow',
    'snags',
    'How do you bow and snap a snagged line?',
    [
      ['draw the tight line, let it go fast', 'Right. Sudden slack knocks the jig back.'],
      ['draw the tight line until it gives', 'That’s just a pull. Letting go does the work.'],
      ['snap the rod up, like a hook set', 'That drives the hook in deeper.']
    ],
    'Rod tip at the snag, face turned away. Draw the line like a bowstring and let go, once or twice.'
  ),
  fact(
    'snag-break',
    'snags',
    'Nothing works, so you have to break the line. How?',
    [
      ['wrapped on a padded tool, face away', 'Right. Never on a hand, never toward anyone.'],
      ['wrapped on a gloved hand, face away', 'Line cuts right through a glove.'],
      ['rod bent double, drag locked down', 'That breaks the rod, and the jig comes at you.']
    ],
    'The tool takes the pull. Keep everyone out of the jig’s path.'
  ),
  fact(
    'snag-braid',
    'snags',
    'A jig hangs in brush. Why does jerking it on heavy braid hang it worse?',
    [
      ['each jerk drives the point in more', 'Right. Mono would soften it some.'],
      ['heavy braid sinks into the brush', 'Braid floats. It’s the hook that hangs.'],
      ['heavy braid hides how hard you pull', 'You feel it fine. The hook feels it, too.']
    ],
    'Braid hardly stretches, so the point gets the whole jerk. Shake it on slack, whatever the line.',
    ['brush']
  ),
  fact(
    'snag-or-fish',
    'snags',
    'You’re hung up, and then it moves off sideways. What was it?',
    [
      ['a fish that you took for the bottom', 'Right. Reel down and sweep.'],
      ['a limb that came loose on its own', 'A limb comes toward you, not sideways.'],
      ['the boat, drifting past the snag', 'A drift is slow and steady, and you know it.']
    ],
    'Bottom holds still and fish move. Plenty of bites get shaken off as snags.'
  )
];
