import { fact } from './fact';

/** Rigging, the hook set, the first drop, the boat, and deep water. */
export const afloat = [
  fact(
    'rig-trailer',
    'rigging',
    'You swap a small trailer for a big one. What changes?',
    [
      ['it falls slower and lifts sooner', 'Right. Both ask for a slower hand.'],
      ['it falls faster: it weighs more', 'Soft plastic weighs next to nothing in water.'],
      ['it looks bigger and acts the same', 'More plastic drags more in the water.']
    ],
    'More plastic pushes more water aside. Count a drop again before you fish it.',
    ['fall with a big trailer', 'fall with a small trailer'],
    { most: 'fall_s' }
  ),
  fact(
    'rig-weedguard',
    'rigging',
    'A weedguard that is too stiff. What do you lose?',
    [
      ['hookups: the point can’t clear it', 'Right. Trim it or fan it.'],
      ['depth: a stiff guard holds it up', 'A guard is a few bristles. It doesn’t float a jig.'],
      ['feel: a stiff guard dulls the rocks', 'The head knocks on rock, not the guard.']
    ],
    'The guard has to fold when a fish bites down. Press it from the side, off the point: it should give under one finger.'
  ),
  fact(
    'rig-point',
    'rigging',
    'How do you know a hook is sharp enough?',
    [
      ['it digs into a thumbnail, no slide', 'Right. If it slides, sharpen or swap it.'],
      [
        'it pricks you at the lightest touch',
        'A dull point pricks, too. Slide it over a thumbnail.'
      ],
      ['it’s new and right out of the package', 'Plenty of new hooks are dull. Test each one.']
    ],
    'A point that slides on your thumbnail slides in a fish’s mouth. Check it after every snag.'
  ),
  fact(
    'set-slack',
    'hook-set',
    'Line jumps, and there’s slack in it. What comes first?',
    [
      ['reel down until tight', 'Right. Then sweep, low and firm.'],
      ['sweep as hard as you can', 'The slack takes your sweep, hard or not.'],
      ['open the reel and wait', 'A fish won’t hold it that long.']
    ],
    'Slack has to come out before the hook moves. The reel takes it faster than the rod.',
    ['slow drag', 'slack drag'],
    { most: 'travel_m' }
  ),
  fact(
    'set-sweep',
    'hook-set',
    'You reeled down, and it pulls back. How do most guides sweep?',
    [
      ['low and long, until the rod loads', 'Right. Length takes up the stretch.'],
      [
        'straight up, as hard as you can',
        'Some do. If it pulls free up there, it flies at your face.'
      ],
      ['one short snap of the wrists', 'Stretch eats a few inches of tip.']
    ],
    'A long, firm sweep to the side moves the hook through stretch. Face out of line with the jig.'
  ),
  fact(
    'set-not',
    'hook-set',
    'When do you not set the hook?',
    [
      ['when it’s a rock that the jig climbs', 'Right. Rock gives nothing back. Ease it over.'],
      ['when the water is cold and they’re slow', 'Cold fish bite soft. Set all the same.'],
      [
        'when it was only one tap and no more',
        'One tap is often all you get. On tight line, sweep.'
      ]
    ],
    'Set on rock and you’re hung. Never with anyone in line: a jig that pulls free comes right at them.'
  ),
  fact(
    'set-tight',
    'hook-set',
    'Line tight, a sharp tap. What do guides do?',
    [
      [
        'sweep, before the fish can let it go',
        'Right. Some reel a turn first. On a tight line both work.'
      ],
      ['hold still, and wait for a second tap', 'Few wait. A fish can spit it by then.'],
      ['give it line, so the fish takes it well', 'Slack gives the fish time to spit it.']
    ],
    'There’s no slack to lose, so sweeping now works. Reeling down first makes sure it’s tight.',
    [],
    'guides differ'
  ),
  fact(
    'drop-watch',
    'first-drop',
    'It’s falling on free spool. Where do you look?',
    [
      ['at the line, right at the water', 'Right. It stops, jumps or runs off sideways.'],
      ['at the rod tip, for the first tap', 'On free spool the tip feels nothing.'],
      ['at the spool, for when it stops', 'You’d see bottom, but not a fish that swims at you.']
    ],
    'A slack line can’t carry a tap to your hand. It shows you everything else.',
    ['fall']
  ),
  fact(
    'drop-runs',
    'first-drop',
    'The jig is halfway down, and the line runs off sideways. What now?',
    [
      ['engage the reel, tighten, sweep', 'Right. Nothing else swims off with it.'],
      ['let it land first, then lift it', 'It has landed: in a mouth. It won’t stay there.'],
      ['give line until it stops running', 'Slack lets it spit the jig.']
    ],
    'A jig falls straight on slack line. Line that runs off has a fish on it, unless wind or drift takes all of it one way.'
  ),
  fact(
    'boat-away',
    'boat-position',
    'The boat drifts away from your jig. What does that do to a drag?',
    [
      ['adds to it: the jig comes farther', 'Right. Give line, or move the rod less.'],
      ['takes from it: it comes less far', 'That’s drifting onto it.'],
      ['nothing, if the line stays tight', 'The boat pulls that tight line along.']
    ],
    'The boat carries the whole rod away, and the jig follows its tip.',
    ['drag, drifting away', 'slow drag'],
    { most: 'travel_m' }
  ),
  fact(
    'boat-onto',
    'boat-position',
    'You’re drifting, wind at your back. You drag and feel no weight. What’s up?',
    [
      ['you drift onto it: it’s slack', 'Right. Reel as you go, or hold the boat.'],
      [
        'the wind has lifted it off bottom',
        'Wind from behind blows slack toward it. Slack lifts nothing.'
      ],
      ['you’ve lost bottom and need more line', 'More line is only more slack.']
    ],
    'The boat comes in as your tip goes away, so the line never tightens. Reel it up, then move.',
    ['slow drag', 'drag, drifting onto it'],
    { most: 'travel_m' }
  ),
  fact(
    'boat-cast',
    'boat-position',
    'Windy day, jig fishing. Where do most guides point the boat?',
    [
      [
        'bow into the wind, held there',
        'Right. It drifts least. Cast ahead or quartering into it.'
      ],
      ['side to the wind, drifting freely', 'That drags your jig for you, at the wind’s pace.'],
      ['stern to the wind, with motor off', 'Waves come over the back. Keep the bow into it.']
    ],
    'A boat that holds still leaves the pace to your hand. Never cast over anyone. Some guides drift on purpose.',
    [],
    'guides differ'
  ),
  fact(
    'deep-count',
    'offshore',
    'From {12 ft|3.5 m} to {36 ft|11 m}, same jig. What about your count?',
    [
      ['it’s about three times as long', 'Right. Time it in one depth, and you know the others.'],
      ['it’s a bit longer: it speeds up', 'It’s at full speed after a foot or so.'],
      [
        'it’s nine times as long or more',
        'Nine times would take a jig that slows down. It doesn’t.'
      ]
    ],
    'It falls at one even speed nearly all the way, so the count goes with the depth.',
    ['deep fall', 'fall in shallow water'],
    { most: 'fall_s', times: [2.5, 3.6] }
  ),
  fact(
    'deep-weight',
    'offshore',
    'You go from {12 ft|3.5 m} with {3/8 oz|11 g} to {30 ft|9 m}. What do most guides tie on?',
    [
      [
        '{3/4 to 1 oz|21 to 28 g}, for a shorter count',
        'Right. Down sooner, and you still feel it.'
      ],
      [
        '{1/4 oz|7 g}, for a slower fall',
        'Some go lighter. Most don’t: you wait long and feel little.'
      ],
      ['{3/8 oz|11 g} again, with a longer count', 'You can. You’ll feel it less, and wait more.']
    ],
    'Heavier gets down and talks better in deep water. Some guides go lighter on purpose, for a slow fall.',
    [],
    'guides differ'
  )
];
