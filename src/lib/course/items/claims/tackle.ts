import { on, type QuestionClaims } from './claim';
import {
  BOULDERS,
  COME_ALIKE,
  FAR_SLIDES,
  FAST_SKIPS,
  HEAVY_FALLS,
  HEAVY_HELPS,
  HEAVY_STAYS,
  HIGHER,
  HIGHER_LATER,
  LINES_DRAG_ALIKE,
  RODS_DRAG_ALIKE,
  ROD_FOLLOWS,
  SLOW_HELPS,
  SLOW_STAYS,
  SNAP_PULLS,
  SWINGS_IN,
  TRAILER_FALLS,
  UNDER_LIFTS,
  WEDGES
} from './rests-on';

export const onTackle: QuestionClaims = {
  'weight-heavier': [
    on(HEAVY_FALLS, 'It falls faster, too'),
    on(
      'practice',
      'and wedges more',
      'The rod sets the hook, not the weight of the jig.',
      'Some guides go as light as they can; some want all the feel they can get.'
    ),
    on(COME_ALIKE, 'On a slow drag both come as far as the tip.'),
    on('answer', 'A heavier jig pulls harder on your line, so you feel it better.')
  ],
  'weight-wind': [
    on(TRAILER_FALLS, 'A bigger trailer falls slower.'),
    on(
      'practice',
      'A low tip leaves little of it there',
      'Then wind puts a bigger belly in it, and the jig lifts.',
      'Casting straighter into the wind helps, too.',
      'Wind pushes on line in the air.'
    ),
    on(HEAVY_STAYS, 'and weight keeps the jig down')
  ],
  'weight-near': [
    on(SLOW_HELPS, 'Quick lifts it even more.'),
    on(HEAVY_HELPS, 'Or tie on a heavier jig.'),
    on('answer', 'Close in, the line is steep, so the same pull lifts more.'),
    on(UNDER_LIFTS, 'Right under you nothing keeps it down'),
    on('practice', 'reel up and cast', 'A higher tip makes the line steeper.')
  ],
  'speed-rock': [
    on(HEAVY_STAYS, 'A lighter jig leaves the bottom sooner.'),
    on(FAST_SKIPS, 'A fast jig leaves bottom and goes right over rock.'),
    on(
      'practice',
      'One slow cast settles it.',
      'Slow down first.',
      'It costs you one cast.',
      'You may just be too fast.'
    )
  ],
  'speed-what-lifts': [
    on(FAR_SLIDES, 'That far out, a slow pull still slides it.'),
    on(HEAVY_STAYS, 'And the lighter the jig, the less of it.'),
    on(SLOW_STAYS, 'Go slow, and even a tight line only slides it.'),
    on(UNDER_LIFTS, 'Right under the boat, any pull lifts it.'),
    on('answer', 'Far out, a jig slides before it lifts, so it takes speed.')
  ],
  'cover-slow': [
    on(
      'practice',
      'A snap wedges it',
      'The longer it climbs, the bigger the rock.',
      'It creeps: keep pulling.',
      'It stops dead: ease off, that’s a snag.'
    ),
    on(FAST_SKIPS, 'or takes it past the next three'),
    on(WEDGES, 'Pulling harder wedges it.')
  ],
  'cover-rest': [
    on(BOULDERS, 'A long load, then a drop: that’s the rock.'),
    on(
      'practice',
      'Rest it, and watch the line.',
      'The best spot of the cast is right there.',
      'A fish keeps pulling.',
      'Fish use the shade and the edge behind a rock.',
      'That’s where a pause pays.'
    )
  ],
  'hops-rhythm': [
    on(HIGHER_LATER, 'Each hop takes its own time to come down.', 'A higher hop falls longer.'),
    on(
      'practice',
      'Then it never gets back to bottom.',
      'Wait for it to land, then count your rest.',
      'Wait for the touch, or for slack line.',
      'Rest as long as you mean to, then hop again.'
    )
  ],
  'hops-follow': [
    on(SWINGS_IN, 'On tight line it swings in like a pendulum.'),
    on(ROD_FOLLOWS, 'It falls straight', 'too tight and it swings'),
    on(
      'practice',
      'and you see the bite',
      'Follow it down',
      'too loose and you miss the bite',
      'Too much slack hides the bite.'
    )
  ],
  'line-stretch': [
    on(LINES_DRAG_ALIKE, 'A slow drag hardly notices.'),
    on(SNAP_PULLS, 'A quick hop pulls hard for a moment.'),
    on(
      'answer',
      'It stretches first.',
      'By the time it pulls back, your lift is over.',
      'Stretch takes the start of a quick move, and a quick move is nearly all start.'
    )
  ],
  'rod-tip': [
    on(
      RODS_DRAG_ALIKE,
      'A slow drag comes out alike.',
      'On a slow move the tip loads once and then follows your hand.'
    ),
    on('practice', 'A soft tip soaks up knocks, too.'),
    on('answer', 'The tip gives while the line loads.')
  ],
  'rod-soft-hop': [
    on(HIGHER, 'Slower keeps it lower, or on the bottom.'),
    on('practice', 'Try one, look, and go by that.', 'How much is up to the rod.'),
    on(
      'answer',
      'It bends first, so less of your lift gets to the jig.',
      'A soft tip takes the start of a lift, so put more in.'
    )
  ],
  'stroke-pendulum': [
    on(
      SWINGS_IN,
      'A held line pulls it toward you as it falls.',
      'It lands closer to you',
      'A held line makes it a pendulum.'
    ),
    on('practice', 'A tight line is what you feel best on.'),
    on('answer', 'and later'),
    on(ROD_FOLLOWS, 'Lower the tip with the jig, and it falls straighter.')
  ],
  'morning-three': [
    on(SWINGS_IN, 'Reel as it falls, and it swings in.'),
    on(
      'practice',
      'Every move starts on bottom.',
      'The rod is back while the jig still falls.',
      'Move, down, touch, next.',
      'On semi-slack line you see it land: the line goes slack.'
    )
  ],
  'morning-choice': [
    on(
      FAST_SKIPS,
      'That finds the rock',
      'Go quick and you feel no rock',
      'You feel rock when you go slow'
    ),
    on(
      'practice',
      'and suits cold fish',
      'until it hangs you',
      'and cold fish won’t chase anything quick',
      'Cold fish won’t come that far.'
    )
  ]
};
