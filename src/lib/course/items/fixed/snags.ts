import { fact } from './fact';

export const snags = [
  fact(
    'snag-first',
    'snags',
    'The jig is stuck. What is the first thing to do?',
    [
      ['stop, slacken, and shake the rod tip', 'Yes. Most snags let go of a slack line.'],
      ['pull hard before it works in deeper', 'Pulling is what sets it deeper.'],
      ['wrap the line and walk backwards', 'That is the last way, and never around a hand.']
    ],
    'Stop, slacken, shake; then change the angle; then bow and snap; then a retriever; last of all break it.',
    ['chunk rock']
  ),
  fact(
    'snag-angle',
    'snags',
    'Shaking has not freed it. What next?',
    [
      ['move the boat past it and pull back', 'Yes. It came in from one side and leaves by it.'],
      ['keep the same angle with more force', 'From the same side it only wedges tighter.'],
      ['let it rest there for some minutes', 'Rock does not let go by itself.']
    ],
    'The way out is the way in: change the angle before you add force.',
    ['chunk rock']
  ),
  fact(
    'snag-bow',
    'snags',
    'How is the bow-and-snap done?',
    [
      ['draw the tight line, let it go at once', 'Yes. The sudden slack knocks the jig back.'],
      ['draw the line slowly until it gives', 'That is a pull. It is the letting go that works.'],
      ['snap the rod up as if setting a hook', 'That sets the hook into the wood.']
    ],
    'Tight line, draw it like a bowstring, let go: the jig gets a knock backwards.'
  ),
  fact(
    'snag-break',
    'snags',
    'Nothing helps, the line must be broken. How?',
    [
      ['wrapped on a padded tool, face away', 'Yes. Never on a hand, never towards anyone.'],
      ['wrapped twice around a gloved hand', 'Line cuts through a glove.'],
      ['with the rod bent and the drag shut', 'That breaks the rod, and the jig comes at you.']
    ],
    'Wrap it on a padded tool, look away, and let nobody stand in its way.'
  ),
  fact(
    'snag-braid',
    'snags',
    'Why does a jig on heavy braid hang so often when it is jerked?',
    [
      ['each jerk drives the point in further', 'Yes: stiff line passes on all of the jerk.'],
      ['braid is heavy and sinks into cracks', 'Braid floats. It is the jerk.'],
      ['the knot of braid catches on the rock', 'Knots seldom hang. Points do.']
    ],
    'A stiff line passes everything on. Shake it slack, do not jerk it tight.',
    ['chunk rock']
  ),
  fact(
    'snag-or-fish',
    'snags',
    'It is stuck, then it moves off sideways. What was it?',
    [
      ['a fish: the bottom does not move', 'Yes. Reel down and sweep firmly.'],
      ['a branch that came loose by itself', 'A branch comes towards you, not sideways.'],
      ['the boat, drifting over the snag', 'A drift is steady, and known beforehand.']
    ],
    'The bottom holds steady; fish move. Many a bite was taken for a snag.'
  )
];
