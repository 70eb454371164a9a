import { fact } from './fact';

export const choices = [
  fact(
    'weight-heavier',
    'weight-depth',
    'Two weights both get down and stay down. What does the heavier one do?',
    [
      ['pull harder on your line', 'Right. It falls faster, too, and wedges more.'],
      ['come farther on a drag', 'On a slow drag both come as far as the tip.'],
      ['set the hook better', 'The rod sets the hook, not the weight of the jig.']
    ],
    'A heavier jig pulls harder on your line, so you feel it better. Some guides go as light as they can; some want all the feel they can get.',
    ['heavy drag', 'light drag'],
    { most: 'pull_N' }
  ),
  fact(
    'weight-wind',
    'weight-depth',
    'Wind comes up and your line bellies. What do you change?',
    [
      [
        'a size heavier, and the rod tip low',
        'Right. Casting straighter into the wind helps, too.'
      ],
      [
        'a size lighter, and the rod tip high',
        'Then wind puts a bigger belly in it, and the jig lifts.'
      ],
      ['a bigger trailer on the same old jig', 'A bigger trailer falls slower.']
    ],
    'Wind pushes on line in the air. A low tip leaves little of it there, and weight keeps the jig down.'
  ),
  fact(
    'weight-near',
    'weight-depth',
    'The jig is close in, {20 ft|6 m} out in {20 ft|6 m}, and keeps lifting. What helps?',
    [
      ['slower moves with the rod tip low', 'Right. Or tie on a heavier jig.'],
      ['quicker moves while the line is short', 'Quick lifts it even more.'],
      ['a higher rod tip, so you feel more', 'A higher tip makes the line steeper.']
    ],
    'Close in, the line is steep, so the same pull lifts more. Right under you nothing keeps it down: reel up and cast.',
    ['hop close in', 'hop far out'],
    { most: 'peak_height_m' }
  ),
  fact(
    'speed-rock',
    'speed-limit',
    'The map says rock, and you feel none. What do you try first?',
    [
      ['the same cast again, at half speed', 'Right. One slow cast settles it.'],
      ['another spot: that map must be off', 'Slow down first. It costs you one cast.'],
      ['a lighter jig, because it feels more', 'A lighter jig leaves the bottom sooner.']
    ],
    'A fast jig leaves bottom and goes right over rock. You may just be too fast.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'speed-what-lifts',
    'speed-limit',
    'Long cast, smooth, flat bottom. What takes the jig off it?',
    [
      ['speed: a slow pull only slides it', 'Right. And the lighter the jig, the less of it.'],
      ['a high rod: then any pull lifts it', 'That far out, a slow pull still slides it.'],
      ['a tight line: slack keeps it down', 'Go slow, and even a tight line only slides it.']
    ],
    'Far out, a jig slides before it lifts, so it takes speed. Right under the boat, any pull lifts it.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'cover-slow',
    'cover',
    'The jig is climbing a rock. What do you do?',
    [
      ['keep pulling, slowly and evenly', 'Right. The longer it climbs, the bigger the rock.'],
      ['snap it over before it can wedge', 'A snap wedges it, or takes it past the next three.'],
      ['reel down on it, and pull it over', 'Pulling harder wedges it.']
    ],
    'It creeps: keep pulling. It stops dead: ease off, that’s a snag.',
    ['chunk rock']
  ),
  fact(
    'cover-rest',
    'cover',
    'It just dropped off a rock. What now?',
    [
      ['let it sit: fish wait on that side', 'Right. Rest it, and watch the line.'],
      ['move on before it can get hung up', 'The best spot of the cast is right there.'],
      [
        'reel down and sweep: it felt like a fish',
        'A long load, then a drop: that’s the rock. A fish keeps pulling.'
      ]
    ],
    'Fish use the shade and the edge behind a rock. That’s where a pause pays.',
    ['chunk rock']
  ),
  fact(
    'hops-rhythm',
    'hops',
    'When do you make the next hop?',
    [
      [
        'once it lands: felt, or line gone slack',
        'Right. Each hop takes its own time to come down.'
      ],
      ['while it’s still falling', 'Then it never gets back to bottom.'],
      [
        'after the same count each time',
        'A higher hop falls longer. Wait for it to land, then count your rest.'
      ]
    ],
    'Wait for the touch, or for slack line. Rest as long as you mean to, then hop again.',
    ['three hops']
  ),
  fact(
    'hops-follow',
    'hops',
    'How does the rod come down after a hop?',
    [
      ['with the jig, on a semi-slack line', 'Right. It falls straight, and you see the bite.'],
      ['all at once, so the line is loose', 'Too much slack hides the bite.'],
      ['reel down behind it, to keep it tight', 'On tight line it swings in like a pendulum.']
    ],
    'Follow it down: too tight and it swings, too loose and you miss the bite.',
    ['hop']
  ),
  fact(
    'stroke-when',
    'stroke',
    'When does a stroke beat a drag?',
    [
      ['warm water, and fish on the chase', 'Right. They come up for it.'],
      ['cold water, and fish sitting still', 'A drag stays in front of fish that won’t chase.'],
      ['thick brush, with fish down inside', 'A stroke hangs up in there.']
    ],
    'A stroke calls in fish from all around. Fish that sit tight stay where they are.',
    ['stroke']
  ),
  fact(
    'line-stretch',
    'line-rod',
    'What does stretchy line do to a quick hop?',
    [
      ['soaks up the start: the hop is lower', 'Right. A slow drag hardly notices.'],
      [
        'slings the jig: the hop is higher',
        'It stretches first. By the time it pulls back, your lift is over.'
      ],
      ['too little to see: the pull is small', 'A quick hop pulls hard for a moment.']
    ],
    'Stretch takes the start of a quick move, and a quick move is nearly all start.',
    ['snap on braid', 'snap on mono'],
    { most: 'peak_height_m' }
  ),
  fact(
    'line-braid',
    'line-rod',
    'Braid feels the most. What’s the catch?',
    [
      ['it bellies in wind and gets cut on rock', 'Right. A leader helps with the rock.'],
      [
        'it sinks and lies among the rocks',
        'Braid floats. Only the end by the jig is in the rocks.'
      ],
      ['it’s thick and slows the fall a lot', 'Braid is thin for its pound test.']
    ],
    'Braid floats, so wind gets hold of it, and its fibers fray on rock.'
  ),
  fact(
    'rod-tip',
    'line-rod',
    'You pick up a softer rod. What changes most?',
    [
      ['quick hops: they don’t go as high', 'Right. The tip gives while the line loads.'],
      ['slow drags: they don’t go as far', 'A slow drag comes out alike.'],
      ['feel: each rock knocks harder', 'A soft tip soaks up knocks, too.']
    ],
    'On a slow move the tip loads once and then follows your hand.',
    ['snap with a stiff rod', 'snap with a soft rod'],
    { most: 'peak_height_m' }
  ),
  fact(
    'rod-soft-hop',
    'line-rod',
    'Softer rod today, and you want the same hop. What do you change?',
    [
      ['a quicker lift, or a longer one', 'Right. Try one, look, and go by that.'],
      ['a slower lift, to spare the tip', 'Slower keeps it lower, or on the bottom.'],
      [
        'the same lift: the tip goes as far',
        'It bends first, so less of your lift gets to the jig.'
      ]
    ],
    'A soft tip takes the start of a lift, so put more in. How much is up to the rod.',
    ['snap with a stiff rod', 'snap with a soft rod'],
    { most: 'peak_height_m' }
  ),
  fact(
    'stroke-pendulum',
    'stroke',
    'After a stroke you hold the rod up on tight line. What does that cost you?',
    [
      ['it swings in, off your spot', 'Right. It lands closer to you, and later.'],
      ['time: it lands later, on the same spot', 'A held line pulls it toward you as it falls.'],
      ['feel: on tight line you miss the bite', 'A tight line is what you feel best on.']
    ],
    'A held line makes it a pendulum. Lower the tip with the jig, and it falls straighter.',
    ['fall with the reel engaged', 'fall'],
    { most: 'fall_s' }
  ),
  fact(
    'season-change',
    'season',
    'Fish on the screen, no bites. How do you change things?',
    [
      ['one thing, for ten casts or so', 'Right. Then you know what did it.'],
      ['all of it at once, to save time', 'Then you never know what helped.'],
      ['leave it: it worked the last time', 'Last time was another day.']
    ],
    'Change one thing and you learn something either way.'
  ),
  fact(
    'season-thermocline',
    'season-map',
    'Summer, and there’s a thermocline at {22 ft|7 m}. Where do you look first?',
    [
      ['at it or above it: few fish below', 'Right. Under it there’s often too little oxygen.'],
      ['below it, because it’s cool there', 'Cool, but often too low on oxygen.'],
      [
        'on bottom, however deep that is',
        'Only where bottom is above it. Deeper there are few fish.'
      ]
    ],
    'Water under a thermocline doesn’t mix with the water above it, so its oxygen gets used up.'
  ),
  fact(
    'morning-log',
    'morning',
    'You’re done with a spot. What goes in the log?',
    [
      ['depth, bottom, jig, pace, bites, misses', 'Right. That’s enough to start there next time.'],
      ['fish, weight, length, lure, photo, time', 'Nice to have. It doesn’t say what you did.'],
      [
        'fish, bites, best jig, best pace, hour',
        'Only what worked. What didn’t saves your next hour.'
      ]
    ],
    'A log of what you fished and how lets you do it again. Most beginners never start one.'
  ),
  fact(
    'morning-three',
    'morning',
    'A drag, a hop, then a stroke. What do you make sure of in between?',
    [
      ['it’s back on bottom: felt or seen', 'Right. Every move starts on bottom.'],
      ['the rod is back where it began', 'The rod is back while the jig still falls.'],
      ['slack is reeled up right away', 'Reel as it falls, and it swings in.']
    ],
    'Move, down, touch, next. On semi-slack line you see it land: the line goes slack.'
  ),
  fact(
    'morning-choice',
    'morning',
    'You found rock, and the water is cold. What do you start with?',
    [
      ['drags, slow enough to feel the rock', 'Right. That finds the rock and suits cold fish.'],
      ['strokes, to pull them in from far', 'Cold fish won’t come that far.'],
      ['quick hops, so you don’t hang up', 'Go quick and you feel no rock until it hangs you.']
    ],
    'You feel rock when you go slow, and cold fish won’t chase anything quick.'
  ),
  fact(
    'morning-order',
    'morning',
    'New spot. What do you find out first?',
    [
      ['depth and bottom, in a few casts', 'Right. Spot first, then jig.'],
      ['what color the fish want today', 'Color comes late. First: where’s your jig?'],
      ['which weight gets down fastest', 'Weight follows depth. Find the depth first.']
    ],
    'The wrong place costs you more than the wrong jig. A few casts tell you depth and bottom.',
    ['fall', 'slow drag']
  )
];
