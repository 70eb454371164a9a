import { fact } from './fact';

export const retrieves = [
  fact(
    'contact-first',
    'bottom-contact',
    'Your jig hits the water. When do you start your retrieve?',
    [
      ['when it’s down: the line stops running out', 'Right. Bottom first, then the move.'],
      ['as soon as the reel is engaged again', 'Then it swings in toward you before it’s down.'],
      [
        'after five seconds, deep or shallow',
        'Shallow, it’s been down a while. Deep, it’s still falling.'
      ]
    ],
    'Line that stops says it’s down. Start sooner, and the jig swims along above bottom.',
    ['fall']
  ),
  fact(
    'contact-lost',
    'bottom-contact',
    'You don’t know if you’re still on bottom. What do you do?',
    [
      ['stop, tip down, give line until slack', 'Right. Start over from what you know.'],
      ['speed up until you feel it hit something', 'Faster lifts it higher. You’ll feel less.'],
      [
        'reel down until you feel its weight again',
        'If it’s off bottom, that lifts it more. Let it sink first.'
      ]
    ],
    'Lost bottom? Give it line until it’s slack. On a held line it swings in, or just hangs.',
    ['fast drag', 'slow drag'],
    { most: 'peak_height_m' }
  ),
  fact(
    'contact-pendulum',
    'bottom-contact',
    'You engage the reel while the jig is falling. Where does it land?',
    [
      ['closer: it swings in on tight line', 'Right. That’s the pendulum.'],
      ['farther: tight line carries it out', 'Line only pulls toward you.'],
      ['the same spot, just a little later', 'Tight line pulls it in all the way down.']
    ],
    'A tight line holds it like a weight on a string. Stay in free spool to land where you cast.',
    ['fall with the reel engaged', 'fall'],
    { most: 'travel_m' }
  ),
  fact(
    'count-calibrate',
    'fall-count',
    'How do you learn how fast your jig falls?',
    [
      ['time three drops in a known depth', 'Right, with the line and trailer you fish.'],
      [
        'look its weight up in a fall chart',
        'Your skirt and trailer aren’t on that chart, and they slow it a lot.'
      ],
      [
        'time one drop in the deepest water',
        'One drop can hit a ledge. Time three where you know the depth.'
      ]
    ],
    'Only your own drops have your skirt, trailer and line in them. Keep the middle one.',
    ['fall with a big trailer', 'fall with a small trailer'],
    { most: 'fall_s' }
  ),
  fact(
    'clock-third',
    'clock',
    'Long cast. Why does a late hour of lift move the jig more than the first?',
    [
      ['the tip now moves straight back from it', 'Right. Down low it moves across the line.'],
      [
        'the rod bends less once it is upright',
        'A slow lift hardly bends it, up there or down low.'
      ],
      [
        'there is less line left in the water',
        'Nearly all of it is still out, and pulls as before.'
      ]
    ],
    'The jig comes as far as the tip gets away from it. On a long cast, all of a late hour counts.',
    ['late hour', 'one hour'],
    { most: 'travel_m' }
  ),
  fact(
    'clock-lower',
    'clock',
    'You lifted slowly to eleven, and the jig is still on bottom. Now you lower the rod. What does the line do?',
    [
      ['goes slack until you reel it up', 'Right. The reel picks up line.'],
      ['pushes the jig out away from you', 'Line can’t push.'],
      ['stays tight: the reel holds it', 'The tip came closer, so there’s line to spare.']
    ],
    'A lift takes line in only while the rod is up. To keep it, reel as you lower.',
    ['hop']
  ),
  fact(
    'reel-moves',
    'one-foot',
    'On a drag, what moves the jig and what picks up line?',
    [
      ['rod moves it, reel picks up line', 'Right. The rod is the finer of the two.'],
      ['reel moves it, rod picks up line', 'The reel’s too coarse for a drag.'],
      ['rod and reel move it together', 'Then you can’t tell how far it came.']
    ],
    'A rod can move a jig one foot. One turn of the handle moves it two or more. To swim it, you reel.',
    ['slow drag']
  ),
  fact(
    'foot-hand',
    'one-foot',
    'Most people who mean to move a jig one foot move it how far?',
    [
      ['well past a foot, often twice that', 'Right. Measure your own.'],
      ['short of a foot, since water drags', 'Water doesn’t hold a slow jig back.'],
      ['one foot, once they’ve done it a lot', 'Years without seeing it don’t help.']
    ],
    'You never see your jig, so nothing ever corrected your hand.',
    ['slow drag']
  ),
  fact(
    'ruler-bias',
    'own-ruler',
    'Ten tries, and all near twice as far as you meant. What do you fix?',
    [
      ['aim shorter, by about half, each time', 'Right. Your hand is steady, just long.'],
      ['slow your hand down until tries tighten up', 'They’re close together already.'],
      ['ten more tries first: it may be luck', 'Ten in one place isn’t luck.']
    ],
    'Ten alike need one fix. Take five more and see if they land closer.'
  ),
  fact(
    'ruler-spread',
    'own-ruler',
    'Ten tries, right on average but all over the place. What helps?',
    [
      ['slower tries, until they tighten up', 'Right. Your average is fine already.'],
      ['aim shorter than you did, each time', 'That spoils the average, which is right.'],
      ['more tries: the average is right', 'A fish sees one move, not your average.']
    ],
    'Half of them long and half short is a hand in a hurry, not a wrong ruler.'
  ),
  fact(
    'ruler-first',
    'own-ruler',
    'Why do you say how far it went before you look?',
    [
      ['saying it first is what trains your feel', 'Right. Only looking teaches little.'],
      ['looking alone doesn’t tell how far it went', 'It does. What you say tells what you felt.'],
      ['so you move it less and play it safe', 'Move it as you mean to. Then say it.']
    ],
    'The gap between what you said and what you see is what your hand learns from.'
  ),
  fact(
    'slack-feel',
    'slack',
    'How do you know the slack is out before you drag?',
    [
      ['reel down slowly until you feel weight', 'Right. Then stop, or you move the jig.'],
      ['lift the rod once, as high as it goes', 'That moves the jig before your move.'],
      ['see if the line at the tip looks tight', 'You can’t see the belly under water.']
    ],
    'Weight on the line says the slack is gone. Slack decides how much of your move gets there.',
    ['slow drag', 'slack drag'],
    { most: 'travel_m' }
  ),
  fact(
    'slack-hop',
    'slack',
    'What does slack do to a quick pull up?',
    [
      ['takes the start, so the jig rises less', 'Right. Only what’s left of the pull lifts it.'],
      [
        'frees the jig, so it rises higher',
        'Slack line can’t pull, and the jig needs the whole lift.'
      ],
      ['just delays it: it rises as high', 'The fast part of your pull went into slack.']
    ],
    'Slack comes out first, and a quick pull is short. Reel down before you hop.',
    ['hop', 'slack hop'],
    { most: 'peak_height_m' }
  ),
  fact(
    'slack-use',
    'slack',
    'When do you want slack?',
    [
      ['for shaking it right where it sits', 'Right. It trembles and stays put.'],
      ['for long drags at one slow pace', 'A drag loses whatever slack there is.'],
      ['for feeling each rock on the way', 'Slack hides rock from your hand.']
    ],
    'Slack lets you twitch line without moving the jig. Leave some in when you mean to.',
    ['slack drag']
  )
];
