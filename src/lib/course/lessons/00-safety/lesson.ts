import { place, onTheWater, cautions } from '../fathomley';

export default {
  id: 'safety',
  order: 0,
  title: 'Safety first',
  minutes: 6,
  about:
    'Before any rod is in a hand. Nothing in this course is worth an eye, a current through a rod, or cold water. Read it once, then go through the list each time you go out.',
  place,
  objectives: [
    'Say what you check before the first cast.',
    'Say what you do when a hook is near an eye, when thunder is heard, and when someone is in cold water.'
  ],
  leaves_out: ['First-aid training: take a course.', 'Your local rules: look them up.'],
  builds_on: [],
  cautions: [...onTheWater, cautions.snag],
  sections: [
    {
      kind: 'feel',
      title: 'Signs, and what to do',
      text: 'Each of these has one answer. There is no weighing up.',
      cues: [
        {
          sign: 'A hook near an eye',
          means: 'Do not pull. Shield it so that nothing touches it, and get emergency care.'
        },
        {
          sign: 'Thunder',
          means: 'Rods down, off the water, to shelter. Wait 30 minutes after the last.'
        },
        {
          sign: 'Wires overhead, at the ramp too',
          means: 'Graphite conducts. Keep at least {length:3.048} away, more where it is required.'
        },
        {
          sign: 'Someone is in cold water',
          means:
            'About a minute to get the breath under control, ten minutes of useful movement, an hour until unconsciousness. So: float first, then act.'
        },
        {
          sign: 'Someone stands behind you',
          means: 'Stop. Look behind before every cast, and agree who casts to which side.'
        },
        {
          sign: 'The jig is stuck and the line points at a person',
          means: 'Do not pull. Change the angle first: a jig that lets go flies along the line.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'Before the first cast',
      text: 'Every time. It takes two minutes.',
      needs: [
        'Life jacket, worn',
        'Eye protection for everyone near a cast',
        'A phone in a dry bag, and someone ashore who knows the plan'
      ],
      steps: [
        'Look up: wires, branches, cloud.',
        'Clip the engine cut-off on. No alcohol.',
        'Agree casting sides.',
        'Licence, seasons and limits: known. Lead: allowed here? Wash hands after it.',
        'Say aloud what you do at the first thunder.'
      ],
      log: [
        'Who ashore knows where you are, and until when',
        'Anything that was missing, so that it is there next time'
      ]
    }
  ]
};
