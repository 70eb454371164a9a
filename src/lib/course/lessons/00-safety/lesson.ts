import { place } from '../fathomley';

export default {
  id: 'safety',
  order: 0,
  title: 'Safety first',
  minutes: 2,
  about: 'Take a boating and a first-aid course.',
  place: { name: place.name, note: 'An invented lake.' },
  objectives: [
    'Know what to check before the first cast.',
    'Know what to do about a hook, thunder, and cold water.'
  ],
  leaves_out: ['First aid, boat handling, your local rules.'],
  claims: [
    { says: ['most people who drown from boats wore none'], basis: 'practice' },
    {
      says: 'Take a boating and a first-aid course.',
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
          means: 'Don’t pull or press. Shield it, cut the line, get emergency care.',
          basis: 'practice'
        },
        {
          sign: 'A hook in a hand',
          means:
            'Cut the line. Deep, or near a joint: tape it still, see a doctor. If not, do only what a first-aid course taught you.',
          basis: 'practice'
        },
        {
          sign: 'A fish at the boat',
          means: 'Net it. Pliers, not fingers: a hook that comes loose hits a hand.',
          basis: 'practice'
        },
        {
          sign: 'You need help',
          means: '911, or VHF channel 16. Say where you are. Whistle and wave.',
          basis: 'practice'
        },
        {
          sign: 'Thunder',
          means:
            'Rods down, off the water, into a building or hardtop car. Wait 30 minutes after the last.',
          basis: 'practice'
        },
        {
          sign: 'Wires overhead, ramps too',
          means:
            'Graphite conducts. Rods flat at the ramp. Stay {10 ft|3 m} away, more where a rule says so.',
          basis: 'practice'
        },
        {
          sign: 'You fall into cold water',
          means:
            'Float a minute: get your breath. Ten minutes of useful movement: to the boat, clear of the prop, and back in. Can’t? Out of the water as far as you can, and hold on: an hour or more before you pass out.',
          basis: 'practice'
        },
        {
          sign: 'Someone else is in the water',
          means:
            'Reach, throw, call for help. Don’t go in. Motor off before they’re near. Then dry and warm. Confused, or done shivering: an emergency.',
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
            'Everyone seated, rods down, kill switch clipped on, one looking ahead. The switch does nothing on the trolling motor: jacket on, pedal on momentary.',
          basis: 'practice'
        },
        {
          sign: 'Wind coming up',
          means:
            'Head in while it’s easy. Bow to the waves at an angle, slow, weight low. Anchor from the bow only.',
          basis: 'practice'
        },
        {
          sign: 'Fog',
          means:
            'Lights on, as before sunrise. Slow enough to stop in half of what you see. Horn. Out of the channel.',
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
            'Wet hands, short air time. Bloated? Send it down on a descending device. Check your state’s rules before you fizz one.',
          basis: 'practice'
        },
        {
          sign: 'Stuck jig, line pointing at someone',
          means: 'A freed jig flies back along the line. Nobody in line, then change the angle.',
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
        'A phone in a dry bag',
        'Throw cushion, fire extinguisher, whistle or horn'
      ],
      steps: [
        'Rules: license, seasons, limits, lead.',
        'Tell somebody on shore where, and when to worry.',
        'Look up: wires, branches, sky. Check wind and fog.',
        'Kill switch clipped on. No alcohol.',
        'Agree who casts where. Look behind every time.',
        'After: wash your hands, clean, drain and dry everything.'
      ],
      log: ['Who knows, and until when', 'What was missing']
    }
  ]
};
