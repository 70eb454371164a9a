import { fact } from './fact';

export const retrieves = [
  fact(
    'contact-first',
    'bottom-contact',
    'The jig meets the water. When does the retrieve begin?',
    [
      ['when the line goes slack at the count', 'Yes: first the bottom, then the move.'],
      ['as soon as the bail has been closed', 'Then it never gets down.'],
      ['after five seconds, in every depth', 'Depth decides, not a habit.']
    ],
    'Not waiting for the bottom is one of the dearest faults.',
    ['fall']
  ),
  fact(
    'contact-lost',
    'bottom-contact',
    'You do not know whether it is still down. What now?',
    [
      ['stop, let it sink, feel it touch', 'Yes. Begin again from what you know.'],
      ['go faster until you feel something', 'Faster lifts it further.'],
      ['raise the rod to tighten the line', 'That draws it off the bottom.']
    ],
    'Whoever has lost the bottom waits for it.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'contact-pendulum',
    'bottom-contact',
    'You close the bail while it falls. Where does it land?',
    [
      ['nearer: it swings in on a tight line', 'Yes. That is the pendulum.'],
      ['farther: the tight line carries it out', 'A line only pulls towards you.'],
      ['the same place, only a bit later', 'A tight line draws it in all the while.']
    ],
    'Open spool until it is down, if you want it where you cast it.',
    ['fall with the bail closed', 'fall'],
    { most: 'travel_m' }
  ),
  fact(
    'count-calibrate',
    'fall-count',
    'How do you find the pace of your jig’s fall?',
    [
      ['three timed drops in a known depth', 'Yes, with the line and trailer that you fish.'],
      [
        'from its weight, by a printed table',
        'Skirt, trailer and line change it by half and more.'
      ],
      ['by dropping it at home into a bucket', 'A bucket is too short, and has no line.']
    ],
    'Three drops, the middle one counts.',
    ['fall']
  ),
  fact(
    'clock-third',
    'clock',
    'Why does a later hour of lift move the bait more than the first?',
    [
      ['the tip then moves back along the line', 'Yes. Low down it moves across it.'],
      ['the rod bends less when it is upright', 'It bends more. It is the direction.'],
      ['the line is lighter above the water', 'Its weight hardly matters. The direction does.']
    ],
    'What counts is how much further the tip gets from the bait.',
    ['late hour', 'one hour'],
    { most: 'travel_m' }
  ),
  fact(
    'clock-lower',
    'clock',
    'After a lift to eleven you lower the rod. What does the line do?',
    [
      ['it goes slack until the reel takes it', 'Yes. The reel recovers line.'],
      ['it pushes the bait away from the boat', 'Line cannot push.'],
      ['it stays as it is: the reel holds it', 'The tip has come nearer: there is line to spare.']
    ],
    'The rod moves the bait, the reel recovers the slack.',
    ['hop']
  ),
  fact(
    'reel-moves',
    'one-foot',
    'What moves the bait, and what recovers the line?',
    [
      ['the rod moves it, the reel recovers', 'Yes.'],
      ['the reel moves it, the rod recovers', 'A reel’s turn is too long and too even for a foot.'],
      ['both move it, and nothing recovers', 'Then slack is left after every move.']
    ],
    'Moving the bait with the reel is a beginner’s habit: a turn is two feet and more.',
    ['slow drag']
  ),
  fact(
    'foot-hand',
    'one-foot',
    'A hand that means a foot mostly moves the bait…',
    [
      ['farther than a foot, often twice that', 'Yes. Measure your own.'],
      ['less than a foot, as water holds it', 'Water does not hold a slow bait back.'],
      ['a foot, once it has done it for years', 'Years without seeing it teach nothing.']
    ],
    'Nobody sees the bait; so the hand was never corrected.',
    ['slow drag']
  ),
  fact(
    'ruler-bias',
    'own-ruler',
    'Ten tries, all near twice the distance. What is wrong?',
    [
      ['bias: mean a smaller number', 'Yes. The hand is steady; its ruler is off.'],
      ['spread: practise more slowly', 'They lie close together. Spread is small.'],
      ['luck: make ten more tries first', 'Ten in one place are no luck.']
    ],
    'Bias needs another number in mind, spread needs a slower hand.'
  ),
  fact(
    'ruler-spread',
    'own-ruler',
    'Ten tries, right on average, but all over the place. What helps?',
    [
      ['slower practice, until they close up', 'Yes. The mean is right already.'],
      ['a smaller number in mind each time', 'That would spoil the mean, which is right.'],
      ['nothing, since the average is right', 'Fish see the single move, not the average.']
    ],
    'Bias and spread are two faults, with two cures.'
  ),
  fact(
    'ruler-first',
    'own-ruler',
    'Why do you guess before the replay is shown?',
    [
      ['the guess is what trains the feeling', 'Yes. Seeing without guessing teaches little.'],
      ['the guess goes into the marks you get', 'It is compared, not marked.'],
      ['the replay takes some time to come up', 'It is there at once.']
    ],
    'Guess, then look: the gap is the lesson.'
  ),
  fact(
    'slack-feel',
    'slack',
    'How do you know that the slack is out before a drag?',
    [
      ['reel down slowly until you feel weight', 'Yes, and no further, or the bait moves.'],
      ['lift the rod once as high as it goes', 'That moves the bait before the move.'],
      ['look whether the line on deck is tight', 'The bow that matters lies under water.']
    ],
    'Slack is what decides how much of a move arrives.',
    ['slow drag', 'slack drag'],
    { most: 'travel_m' }
  ),
  fact(
    'slack-hop',
    'slack',
    'What does slack do to a hop?',
    [
      ['it eats the start, and the hop is low', 'Yes: it decides a hop more than anything else.'],
      ['it lets the bait fly free, and higher', 'The line has to pull first.'],
      ['it changes nothing but the timing', 'The quick part of the move is spent on it.']
    ],
    'Half a metre of slack can make a hop into nothing.',
    ['hop', 'slack hop'],
    { most: 'peak_height_m' }
  ),
  fact(
    'slack-use',
    'slack',
    'When is slack what you want?',
    [
      ['for shakes that leave the bait there', 'Yes: slack twitches shake it in place.'],
      ['for long drags at an even slow pace', 'A drag wants none of it.'],
      ['for setting the hook in deep water', 'There it costs the fish.']
    ],
    'Slack is a tool once you know that it is there.',
    ['slack drag']
  )
];
