import { fact } from './fact';

export const bites = [
  fact(
    'bite-semi-slack',
    'bites',
    'The line hangs semi-slack after a hop. What do you watch?',
    [
      ['the line, where it meets the water', 'Yes. It twitches before your hand feels it.'],
      ['the rod’s tip, as it bends first', 'On a semi-slack line the tip learns it late.'],
      ['the reel’s handle, which turns back', 'It turns far too late.']
    ],
    'On semi-slack the eye is faster than the hand: watch the line.',
    ['hop']
  ),
  fact(
    'bite-early-stop',
    'bites',
    'The count was always 14. Now the line stops at 6. What now?',
    [
      ['reel down and test: it may be a fish', 'Yes. A ledge is there at the next cast too.'],
      ['let it lie: the water is shallower here', 'Perhaps, but a fish will not wait. Test first.'],
      ['open the bail and count once more', 'Then the fish has the line, and lets go.']
    ],
    'An early stop is a ledge, a fish or a tight line. Testing costs nothing.',
    ['fall']
  ),
  fact(
    'bite-weight-gone',
    'bites',
    'Between two drags the weight is gone. What has happened?',
    [
      ['something holds the jig and came up', 'Yes. Reel fast until you feel it, then sweep.'],
      ['the jig lies quietly on a soft spot', 'Lying it weighs nothing new; lifting it would.'],
      ['the line has stretched in the cold', 'Line does not stretch by itself.']
    ],
    'Weight gone is a bite as much as weight added.'
  ),
  fact(
    'bite-sweep',
    'bites',
    'You think it is a bite. How is the hook set?',
    [
      ['reel down, feel weight, sweep firmly', 'Yes. First the slack, then the sweep.'],
      ['jerk the rod up as soon as it taps', 'On slack you move line, not the hook.'],
      ['wait until the fish hooks itself well', 'It spits out what is hard.']
    ],
    'Striking on slack moves the line and not the hook.',
    ['slow drag', 'slack drag'],
    { most: 'travel_m' }
  ),
  fact(
    'bite-mush',
    'bites',
    'The jig feels as if it went through mush, but the bottom is gravel. What is it?',
    [
      ['perhaps a fish: sweep and see', 'Yes. Mush on a clean bottom is news.'],
      ['weed that floats over the gravel', 'It may be. A sweep tells.'],
      ['a line that begins to freeze up', 'Ice rattles in the guides, it is not mushy.']
    ],
    'Know the bottom, and everything that does not belong there is a bite until shown otherwise.',
    ['gravel']
  ),
  fact(
    'bite-set-cost',
    'bites',
    'You are not sure. What does a needless sweep cost?',
    [
      ['a few seconds, and one move of bait', 'Yes. A bite that was let go costs the fish.'],
      ['the spot, since every fish takes fright', 'A sweep is a stroke. It often calls one.'],
      ['the knot, which weakens at each sweep', 'A good knot does not mind.']
    ],
    'When in doubt: reel down, test, sweep.'
  )
];
