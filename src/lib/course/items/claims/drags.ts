import { on, type QuestionClaims } from './claim';
import { FAST_LIFTS, HEAVY_FALLS, SLACK_TAKES, WEIGHT_TIMES } from './rests-on';

export const onDrags: QuestionClaims = {
  'mark-drag': [
    on(
      'answer',
      'That’s the tip’s move, minus what went into slack.',
      'Take the slack off the tip’s move, and mark what’s left.',
      'That’s as far as the tip went.',
      'Slack has to come out first.',
      'Tip minus slack, give or take a few inches.',
      'Here: # of tip, minus # of slack, leaves about #.',
      'In the model: #.',
      'It doesn’t glide on.',
      'Bottom and water stop it when the line stops.',
      'With no slack to take up, the jig goes nearly as far as the tip.',
      'There’s hardly any slack: it stops close to where the tip’s move ends.',
      'Water doesn’t take half of it.',
      'A slow pull passes on nearly all of the tip.',
      'In a slow drag on a tight line the jig goes about as far as the tip.'
    )
  ],
  'tip-way-for-one-foot': [
    on(SLACK_TAKES, 'Reel down first and you need less.'),
    on(
      'answer',
      'That’s what you want of the jig.',
      'The slack has to come out of the tip’s move, too.',
      'Too short: # of tip, minus # of slack, leaves nothing.',
      'What you want, plus what goes into slack.',
      'Tip minus slack, give or take a few inches.',
      'In the model # of tip brings it #.',
      'Too short: # of tip, minus # of slack, leaves about #.',
      'Too far: # of tip, minus # of slack, leaves about #.'
    )
  ],
  'bait-way-of-slow-drag': [
    on(
      'answer',
      'That’s as far as the tip went.',
      'Slack had to come out first.',
      'That’s what is left of the tip’s move once slack is out.',
      'Slack doesn’t eat that much.',
      'Once it’s out, the jig comes with the tip.',
      'Tip minus slack, give or take a few inches.',
      'Here: # of tip, minus # of slack, leaves about #.',
      'In the model: #.',
      'Slack adds nothing: the tip spends part of its move on it.',
      'You took the slack off twice.',
      'It comes out once.'
    )
  ],
  'pace-limit': [
    on(
      'answer',
      'It stays down, but so does',
      'and that’s longer',
      'is too quick: the jig comes off bottom',
      'It’s the longest that stays down.',
      'It’s slow enough to stay down.',
      'It lifts, but so does',
      'and that’s shorter',
      'is too slow: the jig stays on bottom',
      'It’s the shortest that lifts.',
      'It’s quick enough to lift.',
      'At this distance # in # seconds stays down; quicker than # in # second nearly everything lifts.'
    ),
    on('practice', 'Count how many seconds for each foot.')
  ],
  'fault-of-drag': [
    on(
      'answer',
      'The tip moved, and the jig stayed where it was.',
      'Too fast shows a gap under the jig.',
      'This one kept to the bottom.',
      'It hardly moved: the tip only took up slack.',
      'Slack shows as a tip that moves and a jig that doesn’t.',
      'This jig came along.',
      'There’s a gap under it on the way.',
      'It was off bottom on the way: look at the gap under it.',
      'It came along, on bottom all the way.'
    )
  ],
  'weight-and-pace': [
    on(
      'answer',
      'It falls in your count, and it’s slow enough to stay down',
      'It falls in your count, and it’s quick enough to leave bottom',
      'Too light: it’s still falling when your count is up',
      'Too heavy: it’s down before you count #',
      'Too light for your count, and swept that fast it leaves the bottom',
      'It falls in your count, but swept that fast it leaves the bottom',
      'Too heavy for your count, and that’s too fast for a drag',
      'Too light for your count, and that slow it only drags',
      'It falls in your count, but swept that slow it only drags',
      'Too heavy for your count, and swept that slow it only drags'
    ),
    on(HEAVY_FALLS, 'Weight sets the fall'),
    on(FAST_LIFTS, 'pace keeps it down or lifts it'),
    on(WEIGHT_TIMES, 'Four times the weight falls twice as fast.'),
    on('practice', 'Some guides want a slow fall, some a heavy jig they feel.')
  ]
};
