import { on, type QuestionClaims } from './claim';
import {
  ANGLE_FREES,
  BOULDERS,
  BRUSH,
  FAST_SKIPS,
  GRAVEL,
  MUD,
  ROCK,
  SAND,
  SLACK_FREES,
  STRETCH_TAKES,
  WEDGES
} from './rests-on';

export const onBottoms: QuestionClaims = {
  'bottom-mud': [
    on(SAND, 'Sand is even from the first inch.'),
    on(ROCK, 'Rock knocks.'),
    on(
      'answer',
      'The first pull is the heaviest.',
      'This one stuck.',
      'This is dull.',
      'Mud holds a jig that has rested in it, so the start tells you.'
    )
  ],
  'bottom-sand': [
    on(GRAVEL, 'Gravel ticks: you feel single stones.'),
    on(MUD, 'Mud is even, too, but its first pull sticks.'),
    on(BRUSH, 'Brush loads and lets go.'),
    on(
      'answer',
      'This stays even.',
      'Sand is all fine grains: nothing to knock on, nothing to stick in.'
    )
  ],
  'bottom-gravel': [
    on(BOULDERS, 'Boulders sit feet apart: a long load, then a drop.'),
    on(MUD, 'Mud doesn’t tick.'),
    on('answer', 'Small stones, close together.', 'The closer the ticks, the smaller the stones.')
  ],
  'bottom-boulder': [
    on('answer', 'The climb is the load, and the far side is the drop.'),
    on(
      'practice',
      'The longer the load, the bigger the rock.',
      'Weeds pop loose, and nothing drops.',
      'A hole drops without the load before it.',
      'Let it sit there.'
    )
  ],
  'bottom-brush': [
    on(ROCK, 'Rock is hard: a knock or a dead stop.'),
    on('practice', 'Ease off as it loads, and it slips off.'),
    on(GRAVEL, 'Gravel never loads up.'),
    on('answer', 'If it feels springy, it’s wood or stems: they bend before they let go.')
  ],
  'bottom-grass': [
    on('answer', 'This built up.', 'Stems load up on it, then let go.'),
    on(
      'practice',
      'A stump is sudden.',
      'Clay feels the same all the way.',
      'Clean the jig after that.',
      'Slow down and you tell it from brush, which springs and lets go softly.'
    )
  ],
  'bottom-slow': [
    on(
      FAST_SKIPS,
      'A fast jig leaves the bottom and touches less.',
      'A jig that’s off bottom tells you nothing.'
    ),
    on(
      'practice',
      'Long only helps while the jig is down.',
      'What you don’t touch you don’t feel: miss a rock, and you cast past it all day.'
    )
  ],
  'bite-mush': [
    on(GRAVEL, 'That’s the gravel: small stones, close together.', 'Gravel doesn’t do that.'),
    on(
      'practice',
      'Reel down and test it.',
      'A bigger stone.',
      'You’ve gone over it, and it’s gravel again.',
      'Know your bottom.',
      'What doesn’t belong there is a bite until you’ve tested it.'
    )
  ],
  'bite-set-cost': [
    on(BRUSH, 'Brush gives, too.'),
    on(
      'practice',
      'In rock a sweep hangs the jig.',
      'Test it first.',
      'A fish may spit it by then.',
      'Test it now.',
      'Only a fish pulls back.',
      'A test costs you a second; a sweep into rock can cost the jig.',
      'In cold water some guides test longer.'
    )
  ],
  'snag-first': [
    on(WEDGES, 'Pulling is what drives it deeper.'),
    on(SLACK_FREES, 'On slack line the jig’s own weight can back it out.'),
    on(
      'practice',
      'Most snags let go of slack line.',
      'You haven’t tried to free it yet.',
      'Then bow and snap, then the boat over it, then past it.'
    )
  ],
  'snag-angle': [
    on(ANGLE_FREES, 'It comes out the side it went in.', 'The way out is the way in.'),
    on(WEDGES, 'From the same side it only wedges tighter.'),
    on(
      'practice',
      'A wedged jig doesn’t let go on its own.',
      'Change the angle before you add pull.'
    )
  ],
  'snag-braid': [
    on(
      STRETCH_TAKES,
      'Mono would soften it some.',
      'Braid hardly stretches, so the point gets the whole jerk.'
    ),
    on(SLACK_FREES, 'Shake it on slack, whatever the line.'),
    on(
      'practice',
      'Braid floats.',
      'It’s the hook that hangs.',
      'You feel it fine.',
      'The hook feels it, too.'
    )
  ]
};
