import { on, type QuestionClaims } from './claim';
import {
  ALL_GETS_THERE,
  BENDS_LITTLE,
  DEEP_FALLS_ON,
  FALLS_STRAIGHT,
  FAST_SKIPS,
  LIFT_MOVES,
  LINE_STOPS,
  LITTLE_TAKEN,
  ONE_FOOT,
  REEL_KEEPS,
  REEL_MOVES,
  REEL_SWIMS,
  SHALLOW_IS_DOWN,
  SLACK_TAKES,
  SLACK_TREMBLES,
  SWINGS_IN,
  TOO_SOON
} from './rests-on';

export const onContact: QuestionClaims = {
  'contact-first': [
    on(SWINGS_IN, 'Then it swings in toward you before it’s down.'),
    on(SHALLOW_IS_DOWN, 'Shallow, it’s been down a while.'),
    on(DEEP_FALLS_ON, 'Deep, it’s still falling.'),
    on(LINE_STOPS, 'Line that stops says it’s down.'),
    on(TOO_SOON, 'Start sooner, and the jig swims along above bottom.'),
    on('practice', 'Bottom first, then the move.')
  ],
  'contact-lost': [
    on(FAST_SKIPS, 'You’ll feel less.'),
    on(REEL_SWIMS, 'If it’s off bottom, that lifts it more.'),
    on(
      'practice',
      'Let it sink first.',
      'Start over from what you know.',
      'Give it line until it’s slack.'
    ),
    on(SWINGS_IN, 'On a held line it swings in, or just hangs.'),
    on('answer', 'Faster lifts it higher.')
  ],
  'contact-pendulum': [
    on(FALLS_STRAIGHT, 'Stay in free spool to land where you cast.'),
    on(
      'answer',
      'That’s the pendulum.',
      'Line only pulls toward you.',
      'Tight line pulls it in all the way down.',
      'A tight line holds it like a weight on a string.'
    )
  ],
  'count-calibrate': [
    on('answer', 'Your skirt and trailer aren’t on that chart, and they slow it a lot.'),
    on(
      'practice',
      'Right, with the line and trailer you fish.',
      'One drop can hit a ledge.',
      'Time three where you know the depth.',
      'Only your own drops have your skirt, trailer and line in them.',
      'Keep the middle one.'
    )
  ],
  'clock-third': [
    on(BENDS_LITTLE, 'A slow lift hardly bends it, up there or down low.'),
    on(LITTLE_TAKEN, 'Nearly all of it is still out, and pulls as before.'),
    on(
      'answer',
      'Down low it moves across the line.',
      'The jig comes as far as the tip gets away from it.',
      'On a long cast, all of a late hour counts.'
    )
  ],
  'clock-lower': [
    on(
      REEL_KEEPS,
      'The reel picks up line.',
      'The tip came closer, so there’s line to spare.',
      'A lift takes line in only while the rod is up.',
      'To keep it, reel as you lower.'
    ),
    on('practice', 'Line can’t push.')
  ],
  'reel-moves': [
    on(ONE_FOOT, 'A rod can move a jig one foot.'),
    on(REEL_SWIMS, 'To swim it, you reel.'),
    on(
      'practice',
      'The reel’s too coarse for a drag.',
      'The rod is the finer of the two.',
      'Then you can’t tell how far it came.',
      'One turn of the handle moves it two or more.'
    )
  ],
  'foot-hand': [
    on(ALL_GETS_THERE, 'Water doesn’t hold a slow jig back.'),
    on(
      'practice',
      'Years without seeing it don’t help.',
      'Measure your own.',
      'You never see your jig, so nothing ever corrected your hand.'
    )
  ],
  'slack-feel': [
    on(REEL_MOVES, 'Then stop, or you move the jig.'),
    on(LIFT_MOVES, 'That moves the jig before your move.'),
    on('answer', 'Slack decides how much of your move gets there.'),
    on(
      'practice',
      'You can’t see the belly under water.',
      'Weight on the line says the slack is gone.'
    )
  ],
  'slack-hop': [
    on('practice', 'Reel down before you hop.'),
    on(
      'answer',
      'Slack line can’t pull, and the jig needs the whole lift.',
      'Only what’s left of the pull lifts it.',
      'The fast part of your pull went into slack.',
      'Slack comes out first, and a quick pull is short.'
    )
  ],
  'slack-use': [
    on(
      SLACK_TREMBLES,
      'It trembles and stays put.',
      'Slack lets you twitch line without moving the jig.'
    ),
    on(SLACK_TAKES, 'A drag loses whatever slack there is.'),
    on('practice', 'Slack hides rock from your hand.', 'Leave some in when you mean to.')
  ]
};
