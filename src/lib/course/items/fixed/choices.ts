import { fact } from './fact';

export const choices = [
  fact(
    'weight-lightest',
    'weight-depth',
    'Two weights both reach the bottom well. Which one?',
    [
      ['the lighter: it falls and snags less', 'Yes. As light as depth and wind allow.'],
      ['the heavier: you feel more through it', 'It is felt, and it wedges more.'],
      ['either: the fish see no difference', 'They see how it falls.']
    ],
    'Enough weight to know the bottom, and no more.',
    ['fall']
  ),
  fact(
    'weight-wind',
    'weight-depth',
    'The wind gets up, and the line bows. What do you change?',
    [
      ['heavier by a step, and a lower rod', 'Yes. Less line in the wind, more weight below.'],
      ['lighter by a step, and a higher rod', 'Then the wind sails the line away.'],
      ['the trailer, for one that is larger', 'A larger one falls slower and drifts more.']
    ],
    'Wind works on the line in the air. Keep it short.'
  ),
  fact(
    'weight-near',
    'weight-depth',
    'The bait is nearly under the boat and keeps lifting. What helps?',
    [
      ['slower moves, with the tip kept lower', 'Yes, or a heavier jig.'],
      ['quicker moves, because the line is short', 'Quick lifts it even more.'],
      ['a higher tip, to feel more of it', 'A higher tip makes the line steeper.']
    ],
    'A steep line lifts: slower, tip lower, or heavier.',
    ['hop close in', 'hop far out'],
    { most: 'peak_height_m' }
  ),
  fact(
    'speed-rock',
    'speed-limit',
    'The map shows rock, you feel none. What do you try first?',
    [
      ['the same line again, at half the speed', 'Yes. The bait may have flown over it.'],
      ['another spot, since the map must be wrong', 'First slow down: that costs one cast.'],
      ['a lighter jig, which feels much more', 'A lighter one flies sooner.']
    ],
    'A missed rock pile may be a fast hand.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'speed-what-lifts',
    'speed-limit',
    'What takes a jig off a smooth, flat bottom?',
    [
      ['speed: a slow pull only slides it', 'Yes: sliding takes less than lifting.'],
      ['a high rod: any pull then lifts it', 'Even then a slow pull slides it first.'],
      ['a tight line: slack leaves it down', 'A tight line drags it, slowly, as far as you like.']
    ],
    'Every lift is dynamic.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'cover-slow',
    'cover',
    'The jig climbs a stone. What does the hand do?',
    [
      ['holds the load, and lets it come over', 'Yes: then the drop tells how high it was.'],
      ['snaps it over before it can wedge', 'A snap drives it in, or over the next three.'],
      ['gives slack, so that it falls back down', 'Then it never gets over.']
    ],
    'Slow over cover: load, over, drop, rest.',
    ['chunk rock'],
    { sign: 'knocks' }
  ),
  fact(
    'cover-rest',
    'cover',
    'It has just dropped off a stone. What now?',
    [
      ['leave it: fish wait on that side', 'Yes. Rest it, and watch the line.'],
      ['move on at once, before it is hung', 'The best place of the cast is right there.'],
      ['reel in, and cast there once more', 'It is there already.']
    ],
    'The drop behind a stone is where a pause pays.',
    ['chunk rock']
  ),
  fact(
    'hops-rhythm',
    'hops',
    'Why are three hops not made in an even beat?',
    [
      ['each needs its own time to come down', 'Yes: wait for the touch, not for the beat.'],
      ['fish count them and learn the beat', 'They do not count. The bait must be down.'],
      ['the reel needs more time to recover', 'That is quick. The fall is what takes time.']
    ],
    'A hop that begins before the touch is a swim.',
    ['three hops'],
    { sign: 'three hops' }
  ),
  fact(
    'hops-follow',
    'hops',
    'How does the rod come down after a hop?',
    [
      ['with the bait, on a semi-slack line', 'Yes: it falls straight, and you see the bite.'],
      ['at once, so that the line is loose', 'Too much slack hides the bite.'],
      ['not at all, until the bait is down', 'On a tight line it swings in like a pendulum.']
    ],
    'Follow it down: not tight, not loose.',
    ['hop']
  ),
  fact(
    'stroke-when',
    'stroke',
    'When is a stroke worth more than a drag?',
    [
      ['warm water, and fish that chase', 'Yes.'],
      ['cold water, and fish that sit still', 'There a drag in front of them is better.'],
      ['thick brush, and fish deep inside', 'There a stroke hangs.']
    ],
    'Active, schooled fish react to what rises and falls.',
    ['stroke']
  ),
  fact(
    'stroke-fall',
    'stroke',
    'Most bites on a stroke come on the fall. What must the line be?',
    [
      ['just not tight: followed down', 'Yes.'],
      ['tight all the way, to feel every bite', 'Then it swings, and does not fall.'],
      ['quite loose, so that it can tumble', 'Then nothing tells you of the bite.']
    ],
    'Controlled fall: the tip goes down with the bait.',
    ['stroke']
  ),
  fact(
    'line-stretch',
    'line-rod',
    'What does a stretchy line do to a quick hop?',
    [
      ['it takes up the start: the hop is less', 'Yes. Slow drags hardly notice it.'],
      ['it throws the bait: the hop is more', 'It gives first and pays back late, if at all.'],
      ['it does nothing, as the pull is too small', 'A quick hop pulls hard for a moment.']
    ],
    'Stretch matters in quick moves, hardly in slow ones.',
    ['snap on braid', 'snap on thin nylon'],
    { most: 'peak_height_m' }
  ),
  fact(
    'line-braid',
    'line-rod',
    'Braid carries feel best. What does it do badly?',
    [
      ['it bows in wind, and cuts on rock', 'Yes. A leader helps with the rock.'],
      ['it sinks, and lies among the stones', 'It floats.'],
      ['it stretches, and hides the bites', 'It hardly stretches.']
    ],
    'Every line is a bargain: feel, sink, stretch, wear.'
  ),
  fact(
    'rod-tip',
    'line-rod',
    'A soft rod in place of a stiff one: what changes most?',
    [
      ['the height of quick hops is less', 'Yes: the tip gives while the line loads.'],
      ['the way of slow drags is far less', 'Slow drags change by a few parts in a hundred.'],
      ['the time that the bait needs to fall', 'A rod does not reach down there.']
    ],
    'Flex, like stretch, eats quick moves.',
    ['snap with a stiff rod', 'snap with a soft rod'],
    { most: 'peak_height_m' }
  ),
  fact(
    'rod-soft-hop',
    'line-rod',
    'A softer rod than usual, and the hop shall be as high. What do you change?',
    [
      ['a quicker move, or a longer one', 'Yes: the tip gives at first, so ask more of it.'],
      ['a slower move, to spare the tip', 'Slower still leaves it lower, or on the bottom.'],
      ['nothing: a rod only carries feel', 'Its tip bends before the bait leaves the bottom.']
    ],
    'A soft tip takes up the start of a quick move. Try again from what you saw.',
    ['snap with a stiff rod', 'snap with a soft rod'],
    { most: 'peak_height_m' }
  ),
  fact(
    'stroke-pendulum',
    'stroke',
    'After a stroke you hold the rod up on a tight line. What does that cost?',
    [
      ['it swings in, and not where you aimed', 'Yes: it comes down nearer to you, and slower.'],
      [
        'nothing: it falls just as it would',
        'A line that is held draws it towards you as it falls.'
      ],
      ['height: a held line makes it sink faster', 'It holds the bait up. It sinks slower.']
    ],
    'A pendulum falls slower and ends nearer. The tip goes down with the bait.',
    ['fall with the bail closed', 'fall'],
    { most: 'fall_s' }
  ),
  fact(
    'season-change',
    'season',
    'Nothing for an hour. How do you change?',
    [
      ['one thing, for some ten casts or so', 'Yes. Then you know what it was.'],
      ['all of it at once, to save the time', 'Then you never know what helped.'],
      ['nothing: it was right the last time', 'Last time was another day.']
    ],
    'Change one thing at a time.'
  ),
  fact(
    'season-thermocline',
    'season',
    'Below a summer thermocline with little oxygen, how many fish?',
    [
      ['often few: fish above it or at it', 'Yes, so look there first.'],
      ['the most, since it is coolest there', 'Cool, but they cannot breathe there.'],
      ['just as many as at other depths', 'Oxygen decides.']
    ],
    'Deep is not always better.'
  ),
  fact(
    'morning-log',
    'morning',
    'What goes into the log after a spot?',
    [
      ['depth, bottom, weight, pace, one fault', 'Yes: enough to begin there the next time.'],
      ['the number of fish and the weather', 'That tells nothing of what to do.'],
      ['only what worked, so that it is short', 'What did not work saves the next hour.']
    ],
    'No log is the last and longest of the beginner’s faults.'
  ),
  fact(
    'morning-three',
    'morning',
    'Drag, hop, stroke, none of them seen. What do you make sure of between them?',
    [
      ['that it is down again, by its touch', 'Yes. Every move begins on the bottom.'],
      ['that the next is quicker than the last', 'The pace is chosen, it does not have to climb.'],
      ['that all three take the same time', 'Each takes its own time to come down.']
    ],
    'Move, down, touch, then the next: without the touch you do not know where it began.'
  ),
  fact(
    'morning-choice',
    'morning',
    'You find rock, and the water is cold. With what do you begin?',
    [
      ['slow drags, as slow as they still tell', 'Yes: rock is felt slowly, and cold fish wait.'],
      ['long strokes, to draw them from afar', 'Cold fish do not come from afar.'],
      ['quick hops, so that it does not hang', 'Quick, it feels no rock, and hangs on the next.']
    ],
    'What you found and what the water is decide together. Then change one thing at a time.'
  ),
  fact(
    'morning-order',
    'morning',
    'A new spot. What do you find out first?',
    [
      ['depth and bottom, with a few casts', 'Yes. Place comes before bait.'],
      [
        'the colour that the fish like best',
        'Colour comes late. First: are you on the bottom, and on which?'
      ],
      ['how fast you can fish it through', 'Fast is how places are missed.']
    ],
    'Wrong place or unknown depth costs more than any bait.',
    ['fall', 'slow drag']
  )
];
