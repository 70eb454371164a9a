import { on, type QuestionClaims } from './claim';
import {
  ALL_GETS_THERE,
  CLOSE_LIFTS,
  HEAVY_HELPS,
  HEAVY_STAYS,
  HIGHER,
  HOUR_BRINGS,
  LATE_HOUR,
  LIGHTER_HIGHER,
  LONGER_HIGHER,
  REEL_KEEPS,
  SLOW_HELPS,
  STRETCH_TAKES
} from './rests-on';

export const onLifts: QuestionClaims = {
  'order-paces': [
    on('practice', 'On a quick lift guides see more height than the model.'),
    on(HIGHER, 'Same length: the quicker lift goes higher.'),
    on(
      'answer',
      'You weighed how quick against how long.',
      'That’s lowest first: a slow lift drags it, a quick one lifts it.',
      'First ask which are quick enough to leave bottom.',
      'Then weigh pace against length.',
      'A slow lift hardly gets it up: a shorter, quicker one can beat it.',
      'Longer and in less time: that wins both ways.',
      'A longer lift can still beat a short one, even in more time.'
    ),
    on(LONGER_HIGHER, 'Same time: the longer lift goes higher, as its tip is quicker.')
  ],
  'hour-of-most-travel': [
    on(LATE_HOUR, 'Rod square to it, all of it counts: late on a flat line'),
    on('practice', 'Guides see less than the model.'),
    on(
      'answer',
      'Rod pointing down the line, a lift gets you nothing.',
      'earlier on a steep one',
      'As long, but from # more of the swing goes along the line',
      'As long, but from # more of the swing goes across the line',
      'Longer, and from # more of the swing goes along the line',
      'Longer, but from # more of the swing goes across the line',
      'Shorter, and from # more of the swing goes across the line',
      'Shorter, but from # more of the swing goes along the line',
      'From # more of the swing goes along the line, but it’s shorter',
      'From # more of the swing goes across the line, but it’s longer',
      'That’s the one with the most swing along the line',
      'That’s the one with the least swing along the line',
      'A jig that leaves bottom also swings in, and comes farther.'
    )
  ],
  'sweep-or-lift': [
    on(
      'answer',
      'Slow and low: it only drags',
      'Short, but quick: that gets it up more than a slow move',
      'Long and quick: nothing takes it higher',
      'It’s the only quick one, and quick lifts',
      'A slow, low sweep only drags it',
      'A slow move gets it up less than a quick one',
      'Quick, but short: a snap over three hours goes higher',
      'It’s slow, and it’s short',
      'Slow, but three hours: this close, the rising rod lifts it all the same',
      'It’s long, and it’s quick',
      'This close, three hours of rising rod lift it, slow or not',
      'It’s slow, too, but short: three hours lift it more',
      'It’s as long, but slow: a quick snap takes it higher'
    ),
    on(HIGHER, 'Height takes pace and length.'),
    on(CLOSE_LIFTS, 'Close in, less of either will lift it: the line is steep.')
  ],
  'near-or-far': [
    on(
      'answer',
      'The line is flatter at #',
      'The line is steeper at #',
      'and # seconds is slower',
      'and # seconds is quicker',
      'and # second is quicker',
      'both get it up less',
      'both get it up more',
      'the pace wins, so it goes higher',
      'the pace wins, so it doesn’t go as high',
      'the line wins, so it goes higher',
      'the line wins, so it doesn’t go as high',
      'Close in, the steep line beats the quicker hand.',
      'It’s the quickest, and that beats a steeper line.',
      'The line’s flattest there, and you’re slow enough.',
      'It’s the slowest, and that beats a flatter line.'
    ),
    on(SLOW_HELPS, 'As the jig gets close: go slower'),
    on('practice', 'keep the tip lower', 'On a quick lift guides see more height than the model.'),
    on(HEAVY_HELPS, 'or tie on more weight')
  ],
  'order-weights-hop': [
    on('practice', 'On a quick lift guides see more height than the model.'),
    on(HEAVY_STAYS, 'What sinks slowly lifts easily'),
    on(LIGHTER_HIGHER, 'At one pace the lighter goes higher.'),
    on(
      'answer',
      'A quick hand lifts any of them.',
      'That’s lowest first: weight keeps it down, a quick hand gets it up.',
      'Weigh both: a light jig lifts at a slow pace, a heavy one needs a quick hand.'
    )
  ],
  'order-lines-hop': [
    on(STRETCH_TAKES, 'Mono stretches', 'braid hardly does'),
    on('practice', 'thin mono most', 'more line stretches more'),
    on(CLOSE_LIFTS, 'Far out, the line also pulls flatter.'),
    on(
      'answer',
      'Steep line first.',
      'At one distance, the line that stretches less.',
      'That’s lowest first: long, thin mono soaks up a stroke.',
      'Two things count: how much the line gives, and how steep it is.'
    )
  ],
  'order-moves-travel': [
    on(
      'practice',
      'Guides see less than the model: about half for nine to ten, about two thirds for nine to twelve.'
    ),
    on(ALL_GETS_THERE, 'A foot of sweep is about a foot of jig.'),
    on(HOUR_BRINGS, 'An hour of lift is #, by where the line points.'),
    on(
      'answer',
      'The farther the tip gets from the jig, the farther the jig comes.',
      'That’s least first.',
      'Compare how far the tip gets from the jig.',
      'Only swing along the line moves the jig: up high on a flat line, earlier on a steep one.'
    )
  ],
  'fault-of-hops': [
    on(
      'answer',
      'One too few: there was a gap under the jig twice',
      'One too few: there was a gap under the jig three times',
      'Two too few: there was a gap under the jig three times',
      'One too many: there was a gap under the jig once',
      'One too many: there was a gap under the jig twice',
      'Two too many: there was a gap under the jig once',
      'It left bottom and landed once',
      'It left bottom and landed twice',
      'It left bottom and landed three times'
    ),
    on('practice', 'A hop ends when the jig is back on bottom.', 'Let it land, and feel it land.')
  ],
  'hops-and-reel': [
    on(
      REEL_KEEPS,
      'The rod moves it, the reel keeps it: each hop starts on tight line, where the last one ended.',
      'Only the reel keeps line.'
    ),
    on(
      'answer',
      'That’s all you’d get without the reel.',
      'Here you took up the slack.',
      'You only hopped it twice.',
      'You kept what each hop gained.',
      'The next lift only takes up what lowering the rod gave back.',
      'Even the second lift starts with slack, so it gains nothing.',
      'Not without the reel: each time you lower the rod, it all goes slack again.',
      'Off bottom each hop still swings in a little, and that’s all it adds.',
      'That’s two hops’ worth, and you made three.'
    )
  ]
};
