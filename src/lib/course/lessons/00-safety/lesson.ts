import { place } from '../fathomley';

export default {
  id: 'safety',
  order: 0,
  title: 'Safety first',
  minutes: 3,
  about: 'A boating or first-aid course beats this page.',
  place: { name: place.name, note: 'An invented lake.' },
  objectives: [
    'Know what to check before the first cast.',
    'Know what to do about a hook, thunder, and cold water.'
  ],
  leaves_out: ['First aid, boat handling, your local rules.'],
  claims: [
    { says: ['most people who drown from boats wore none'], basis: 'practice' },
    {
      says: 'A boating or first-aid course beats this page.',
      basis: 'practice'
    }
  ],
  builds_on: [],
  cautions: ['Local rules and licensed training come before anything said here.'],
  sections: [
    {
      kind: 'feel',
      title: 'What you do when',
      cues: [
        {
          sign: 'A hook near an eye',
          means: 'Don’t pull. Shield it without pressing, cut the line, get emergency care.',
          basis: 'practice'
        },
        {
          sign: 'A hook in a hand',
          means:
            'Cut the line. Deep, or near a joint: tape it still and see a doctor. Otherwise do only what a first-aid course taught you.',
          basis: 'practice'
        },
        {
          sign: 'A fish at the boat',
          means: 'Net it. It flops, and the free hook is what hits a hand. Pliers, not fingers.',
          basis: 'practice'
        },
        {
          sign: 'You need help',
          means:
            '911, or VHF channel 16 where you have a radio. Whistle and wave: the call says where you are.',
          basis: 'practice'
        },
        {
          sign: 'Thunder',
          means:
            'Rods down, off the water, into a building or a hardtop car. Wait 30 minutes after the last.',
          basis: 'practice'
        },
        {
          sign: 'Wires overhead, ramps too',
          means:
            'Graphite conducts. Lay rods flat at the ramp. Stay {10 ft|3 m} away, more where the rule says more.',
          basis: 'practice'
        },
        {
          sign: 'You fall into cold water',
          means:
            'Float first: about a minute to get your breath. Then ten minutes of useful movement: back to the boat, clear of a turning prop. About an hour or more before you pass out: stay with the boat.',
          basis: 'practice'
        },
        {
          sign: 'Someone else is in the water',
          means:
            'Reach, throw, call for help. Don’t go in. Motor off before they’re near it. Then dry and warm; confused or no longer shivering is an emergency.',
          basis: 'practice'
        },
        {
          sign: 'Getting back aboard',
          means:
            'Know your ladder or strap before you need it. Motor off, hold on, kick flat, slide in.',
          basis: 'practice'
        },
        {
          sign: 'Boat under way',
          means:
            'Everyone seated, rods down, kill switch clipped on, one person looking ahead. Up front on the trolling motor it does nothing: jacket on, pedal on momentary.',
          basis: 'practice'
        },
        {
          sign: 'Wind coming up',
          means:
            'Head in while it’s still easy. Bow to the waves, weight low. Anchor from the bow, never the stern.',
          basis: 'practice'
        },
        {
          sign: 'Fog',
          means:
            'Lights on, as before sunrise. Go slow enough to stop in half of what you can see. Sound the horn. Keep out of the channel.',
          basis: 'practice'
        },
        {
          sign: 'Heat',
          means:
            'Drink before you’re thirsty. Dizzy or confused: shade, cold water on the skin, call for help.',
          basis: 'practice'
        },
        {
          sign: 'A fish from deep water',
          means:
            'Wet hands, short air time. Bloated? Clip on a weighted descending device: it lets go deep. Ask your state before you vent one.',
          basis: 'practice'
        },
        {
          sign: 'Stuck jig, line pointing at someone',
          means: 'Don’t pull. It comes off along the line. Change the angle first.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'Before the first cast',
      needs: [
        'Life jackets, worn: most people who drown from boats wore none',
        'Glasses for everyone',
        'A phone in a dry bag'
      ],
      steps: [
        'Rules: license, seasons, limits, lead.',
        'Tell somebody on shore where, and when to worry.',
        'Look up: wires, branches, sky. Check wind and fog.',
        'Kill switch clipped on. No alcohol.',
        'Agree who casts on which side. Look behind every time.',
        'After: wash your hands, clean, drain and dry everything.'
      ],
      log: ['Who knows, and until when', 'What was missing']
    }
  ]
};
