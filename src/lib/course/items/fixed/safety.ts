import { fact } from './fact';

export const safety = [
  fact(
    'safety-eyes',
    'safety',
    'Two of you are casting from one boat. What comes first?',
    [
      ['glasses on, both of you', 'Right. A jig that pops loose flies at the boat.'],
      ['take turns, and look before each cast', 'Good habits, but a jig can pop loose any time.'],
      ['cast sidearm, so hooks stay low', 'Sidearm swings the hook at eye height.']
    ],
    'Then agree who casts on which side, and look behind you every time.'
  ),
  fact(
    'safety-hook-in-eye',
    'safety',
    'A hook is in an eyelid, right by the eye. What do you do?',
    [
      ['shield it and get emergency care', 'Right. Nobody pulls on anything near an eye.'],
      ['back it out the way it came in', 'Never near an eye: the pull does the harm.'],
      ['cut the point off, then back it out', 'Every push moves it. Leave that to a doctor.']
    ],
    'Cut the line, leave the hook, shield it without pressing. A doctor takes it out.'
  ),
  fact(
    'safety-power-line',
    'safety',
    'A power line crosses the ramp. How far do you keep the rod from it?',
    [
      [
        '{10 ft|3 m}, and more where a rule says',
        'Right. Graphite conducts, and so does wet line.'
      ],
      ['{3 ft|1 m} or more, if the rod is dry', 'Dry graphite conducts too, and current jumps.'],
      [
        'one rod length, if you hold it down',
        'A rod length is too close: {10 ft|3 m} is the least.'
      ]
    ],
    'Current can jump, so you need distance. Carry rods low and level at ramps.'
  ),
  fact(
    'safety-thunder',
    'safety',
    'You hear thunder. When do you fish again?',
    [
      ['30 minutes after the last thunder', 'Right, and in shelter until then.'],
      ['after 30 minutes without any rain', 'Rain isn’t it. Count from the last thunder.'],
      ['when it sounds farther off than before', 'If you can hear it, it can hit you.']
    ],
    'Storms strike behind and ahead of the rain. Rods down, shelter, 30 minutes.'
  ),
  fact(
    'safety-life-jacket',
    'safety',
    'Flat lake, short run. Where’s your life jacket?',
    [
      ['on, with the kill switch clipped on', 'Right. Most who drown from boats wore none.'],
      ['within reach, since the lake is calm', 'In the water you’ll hardly get one on.'],
      ['on for the run, off while you fish', 'People fall in while they fish, too.']
    ],
    'Falls come without warning. A jacket you wear works; one you reach for doesn’t.'
  ),
  fact(
    'safety-cold-water',
    'safety',
    'You fall into cold water. What do you do first?',
    [
      ['get your breathing under control', 'Right. Then you can act.'],
      ['swim for the bank as fast as you can', 'People drown gasping as they swim. Breathe first.'],
      [
        'kick off your boots, so you float high',
        'Boots don’t sink you. Your first minute is for breathing.'
      ]
    ],
    'Cold makes you gasp for about a minute. Float through it, then get out.'
  ),
  fact(
    'safety-dry-drill',
    'safety',
    'You’re working on your sweep on the lawn. What’s on the line?',
    [
      ['no hook, and nobody anywhere close', 'Right, and nothing overhead.'],
      ['the usual jig, so the weight is real', 'A hook on a lawn finds the dog, or an eye.'],
      ['the usual jig, with its point taped', 'Tape comes off in a sweep. Take the hook off.']
    ],
    'A sweep trains without a hook. Look up, too: no wires, no branches.'
  ),
  fact(
    'safety-lead',
    'safety',
    'You’ve handled lead jigs all morning. Lunch time. What first?',
    [
      [
        'wash your hands with soap and water',
        'Right. And small lead jigs are banned in many places.'
      ],
      ['wipe your hands well on a dry rag', 'A rag doesn’t take it off.'],
      ['use hand sanitizer, if it’s handy', 'Sanitizer kills germs. Lead stays on.']
    ],
    'Lead gets in by mouth, so wash it off. Where lead is restricted, fish something else.'
  ),
  fact(
    'safety-clean-boat',
    'safety',
    'You’re fishing another lake next. What about boat and gear?',
    [
      ['clean, drain and dry it all first', 'Right. What lives in one lake can ruin another.'],
      ['rinse it in the lake you’re leaving', 'That water is what carries it along.'],
      ['pull the plug, drain the livewell', 'Draining isn’t drying, and weeds ride along.']
    ],
    'What rides along in a wet boat takes over the next lake. Drying takes days. Same day: a hot wash at a station, or don’t go.'
  ),
  fact(
    'safety-plan',
    'safety',
    'You’re launching alone. Who knows your plan?',
    [
      ['somebody on shore, who knows when to call', 'Right. Then somebody misses you in time.'],
      ['anyone I call once I’m on the water', 'A wet phone calls nobody. Tell them first.'],
      ['the one who finds the note on my dashboard', 'Nobody reads it until dark.']
    ],
    'Help comes when somebody on shore knows that you’re late.'
  )
];
