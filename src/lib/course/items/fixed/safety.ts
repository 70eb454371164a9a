import { fact } from './fact';

export const safety = [
  fact(
    'safety-eyes',
    'safety',
    'Two of you cast from one boat. What comes first?',
    [
      [
        'agree sides and wear eye protection',
        'Yes. A jig that comes loose flies straight at the boat.'
      ],
      ['cast in turn and shout before it', 'Shouting does not stop a hook. Glasses do.'],
      [
        'stand back to back while casting',
        'Back to back each casts over the other. Agree on sides, and look behind you.'
      ]
    ],
    'Eye protection for everyone near a cast, casting sides agreed, a look behind before each cast.'
  ),
  fact(
    'safety-hook-in-eye',
    'safety',
    'A hook is in the eyelid, close to the eye. What now?',
    [
      ['shield it and get emergency care', 'Yes. Nothing is pulled near an eye.'],
      ['pull it out along the way it came', 'Never near an eye: the pull does the harm.'],
      ['rinse it and watch it for an hour', 'Waiting costs sight. Shield it and go.']
    ],
    'Shield it without pressing, leave the hook where it is, cut the line, get emergency care.'
  ),
  fact(
    'safety-power-line',
    'safety',
    'A power line crosses the ramp. How far does the rod stay from it?',
    [
      [
        '{length:3.048} at least, more if required',
        'Yes. Graphite conducts, and a wet line does too.'
      ],
      [
        '{length:0.9144} at least, if the rod is dry',
        'Dry graphite conducts as well, and current jumps.'
      ],
      [
        'a rod’s length, if it is held low',
        'A rod’s length is less than the distance that is asked for.'
      ]
    ],
    'Carry rods level and low on ramps. Where a rule asks for more distance, the rule holds.'
  ),
  fact(
    'safety-thunder',
    'safety',
    'You hear thunder. When do you fish again?',
    [
      ['30 minutes after the last of it', 'Yes, and in shelter until then.'],
      ['as soon as the rain has stopped', 'Lightning strikes far from the rain.'],
      ['when it sounds farther than before', 'Who hears it can be struck by it.']
    ],
    'At the first thunder: rods down, to shelter, and 30 minutes’ wait after the last.'
  ),
  fact(
    'safety-life-jacket',
    'safety',
    'The lake is flat, the spot is near. The life jacket?',
    [
      ['worn, with the cut-off clipped on', 'Yes. Most who drown from boats wore none.'],
      ['within reach, as the water is calm', 'Nobody puts one on in the water.'],
      ['under the seat until the wind is up', 'It is the fall that counts, not the wind.']
    ],
    'Wear it, clip the engine cut-off, and leave word ashore where you are.'
  ),
  fact(
    'safety-cold-water',
    'safety',
    'You fall into cold water. What do you do first?',
    [
      ['get your breathing under control', 'Yes. About a minute; then you can act.'],
      [
        'swim for the bank as fast as you can',
        'Gasping while swimming is how people drown. First the breath.'
      ],
      [
        'take off boots and heavy clothing',
        'Ten minutes of useful movement are too short for that.'
      ]
    ],
    'About one minute for the breath, ten minutes of useful movement, an hour to unconsciousness.'
  ),
  fact(
    'safety-dry-drill',
    'safety',
    'You practise the sweep with a real rod on the lawn. With what on the line?',
    [
      ['no hook, and a clear space around', 'Yes, and nothing overhead.'],
      ['the usual jig, as weight matters', 'A hook on a lawn finds the dog, or an eye.'],
      ['the jig, with its hook point taped', 'Tape comes off in a sweep. Take the hook away.']
    ],
    'No hook, clear overhead and around; a phone on the rod is strapped so that it cannot fly.'
  ),
  fact(
    'safety-lead',
    'safety',
    'You have handled lead jigs all morning. Before the sandwich?',
    [
      ['wash the hands, and mind local rules', 'Yes. Small lead is restricted in many places.'],
      ['wipe the hands well on a dry cloth', 'A cloth does not take it off.'],
      ['nothing: lead is safe when it is painted', 'Paint chips. Wash your hands.']
    ],
    'Use the alternatives where lead is restricted; wash hands before eating.'
  ),
  fact(
    'safety-clean-boat',
    'safety',
    'You move to another lake today. What about boat and gear?',
    [
      ['clean, drain and dry all of it first', 'Yes. What lives in one lake can ruin another.'],
      ['rinse it in the next lake on arrival', 'That is how it gets there.'],
      ['nothing, if both lakes are close by', 'Near lakes are not the same lake.']
    ],
    'Clean, drain and dry whatever was in the water.'
  ),
  fact(
    'safety-plan',
    'safety',
    'Before you push off alone, who knows the plan?',
    [
      ['someone ashore, with a time to call', 'Yes. Then somebody misses you in time.'],
      ['nobody: the phone is in the pocket', 'A phone under water calls nobody.'],
      ['the note that lies in the car', 'Nobody reads it until the evening.']
    ],
    'Someone ashore knows where you are and when to worry. No alcohol on the water.'
  )
];
