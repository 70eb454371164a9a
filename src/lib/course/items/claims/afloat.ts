import { on, type QuestionClaims } from './claim';
import {
  DRIFT_ADDS,
  DRIFT_TAKES,
  FALLS_STRAIGHT,
  FEELS_NOTHING,
  HEAVY_FALLS,
  HEAVY_PULLS,
  SLACK_TAKES,
  TRAILER_LIFTS
} from './rests-on';

export const onAfloat: QuestionClaims = {
  'rig-trailer': [
    on(TRAILER_LIFTS, 'Both ask for a slower hand.'),
    on(
      'practice',
      'Soft plastic weighs next to nothing in water.',
      'Count a drop again before you fish it.'
    ),
    on('answer', 'More plastic drags more in the water.', 'More plastic pushes more water aside.')
  ],
  'set-slack': [
    on(
      'practice',
      'Then sweep, low and firm.',
      'A fish won’t hold it that long.',
      'The reel takes it faster than the rod.'
    ),
    on(
      'answer',
      'The slack takes your sweep, hard or not.',
      'Slack has to come out before the hook moves.'
    )
  ],
  'drop-watch': [
    on(FEELS_NOTHING, 'On free spool the tip feels nothing.'),
    on(
      'practice',
      'It stops, jumps or runs off sideways.',
      'You’d see bottom, but not a fish that swims at you.',
      'A slack line can’t carry a tap to your hand.',
      'It shows you everything else.'
    )
  ],
  'drop-runs': [
    on(FALLS_STRAIGHT, 'A jig falls straight on slack line.'),
    on(
      'practice',
      'It has landed: in a mouth.',
      'It won’t stay there.',
      'Slack lets it spit the jig.',
      'Nothing else swims off with it.',
      'Line that runs off has a fish on it, unless wind or drift takes all of it one way.'
    )
  ],
  'boat-away': [
    on('practice', 'Give line, or move the rod less.'),
    on(DRIFT_TAKES, 'That’s drifting onto it.'),
    on(
      'answer',
      'The boat pulls that tight line along.',
      'The boat carries the whole rod away, and the jig follows its tip.'
    )
  ],
  'boat-onto': [
    on(
      'practice',
      'Wind from behind blows slack toward it.',
      'Slack lifts nothing.',
      'Reel as you go, or hold the boat.',
      'Reel it up, then move.'
    ),
    on(SLACK_TAKES, 'More line is only more slack.'),
    on('answer', 'The boat comes in as your tip goes away, so the line never tightens.')
  ],
  'boat-cast': [
    on(DRIFT_ADDS, 'That drags your jig for you, at the wind’s pace.'),
    on(
      'practice',
      'Waves come over the back.',
      'Keep the bow into it.',
      'It drifts least.',
      'Cast ahead or quartering into it.',
      'A boat that holds still leaves the pace to your hand.',
      'Never cast over anyone.',
      'Some guides drift on purpose.'
    )
  ],
  'deep-count': [
    on(
      'answer',
      'Time it in one depth, and you know the others.',
      'It’s at full speed after a foot or so.',
      'Nine times would take a jig that slows down.',
      'It doesn’t.',
      'It falls at one even speed nearly all the way, so the count goes with the depth.'
    )
  ],
  'deep-weight': [
    on(HEAVY_FALLS, 'Down sooner', 'and wait more', 'Heavier gets down'),
    on(
      HEAVY_PULLS,
      'and you still feel it',
      'You’ll feel it less',
      'and talks better in deep water'
    ),
    on(
      'practice',
      'Some go lighter.',
      'Most don’t: you wait long and feel little.',
      'You can.',
      'Some guides go lighter on purpose, for a slow fall.'
    )
  ]
};
