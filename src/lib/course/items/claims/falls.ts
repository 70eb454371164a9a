import { on, type QuestionClaims } from './claim';
import {
  DEPTH_TIMES,
  SWINGS_IN,
  TRAILER_BEATS,
  TRAILER_FALLS,
  WEIGHT_BEATS,
  WEIGHT_TIMES
} from './rests-on';

export const onFalls: QuestionClaims = {
  'fall-count': [
    on(SWINGS_IN, 'Engage the reel then and it swings in on you.'),
    on('practice', 'Three timed drops give you your own number.', 'You’d miss what picked it up.'),
    on(DEPTH_TIMES, 'It gets to one even speed right away'),
    on(
      'answer',
      'this one about # a second',
      'Far too soon: it isn’t halfway down by then.',
      'Too soon.',
      'It’s been sitting there most of that time.',
      'Too many.',
      'It’s down by then, and lies there while you count.'
    ),
    on(TRAILER_FALLS, 'Weight, skirt and trailer set it.')
  ],
  'count-to-depth': [
    on(
      'answer',
      'Too shallow: it would have been down sooner.',
      'Same jig, same line, same speed.',
      'Far too deep: you’d still be counting.',
      'Depth goes with the count: # seconds is twice the # you timed, so it’s twice as deep.',
      'Too deep: that takes a longer count.',
      'Far too shallow: it would have been down long before.',
      'Less than the depth you timed, and this count ran longer.',
      'That’s the depth you timed, and this count ran longer.',
      'Depth goes with the count: # seconds is about # times the # you timed, so it’s # times as deep.',
      'Depth goes with the count: # seconds is # times the # you timed, so it’s # times as deep.',
      'Too shallow: that gives the # extra seconds # each.',
      'Yours falls about # a second.',
      'Too deep: that gives the # extra seconds # each.'
    )
  ],
  'order-weights-fall': [
    on(DEPTH_TIMES, 'Twice the depth takes twice the count.'),
    on(WEIGHT_TIMES, 'Four times the weight takes half the count.'),
    on(
      'answer',
      'Deeper takes longer, and so does lighter.',
      'That’s shortest first: deep and light take longest.',
      'Weigh one against the other: deeper takes longer, and so does lighter.'
    )
  ],
  'trailer-fall': [
    on(
      'answer',
      '# is heavier than #, with the same trailer: it’s down sooner',
      '# is lighter than #, with the same trailer: it’s down later',
      '# is heavier than #, and its trailer is smaller: both get it down sooner',
      '# is lighter than #, and its trailer is bigger: both get it down later',
      '# is heavier than #, and its trailer is bigger: the trailer wins, so it’s down later',
      '# is heavier than #, and its trailer is bigger: the weight wins, so it’s down sooner',
      '# is lighter than #, and its trailer is smaller: the weight wins, so it’s down later',
      '# is lighter than #, and its trailer is smaller: the trailer wins, so it’s down sooner',
      'Its big trailer beats a lighter jig.',
      'Its small trailer beats a heavier jig.',
      'Lightest of the three, with the big trailer.',
      'Heaviest of the three, with the small trailer.',
      'It’s the lightest, and that beats a bigger trailer.',
      'It’s the heaviest, and that beats a smaller trailer.',
      'The right one is lighter and its trailer bigger: both slow it.',
      'The right one is heavier and its trailer smaller: both speed it up.'
    ),
    on(WEIGHT_BEATS, 'The model says twice the weight just makes up for a big trailer'),
    on(TRAILER_BEATS, 'half again as much doesn’t'),
    on('practice', 'Time your own.')
  ],
  'mark-fall': [
    on(SWINGS_IN, 'Engage the reel then and it swings in on you.'),
    on(TRAILER_FALLS, 'Weight, skirt and trailer set it'),
    on('practice', 'and skirts differ a lot: so the band is wide', 'Time three drops of your own.'),
    on(
      'answer',
      'Right, within what a skirt and trailer leave open.',
      'This one falls about # a second, and it has # to go.',
      'Too soon.',
      'It’s been on bottom for half of that.'
    )
  ]
};
