import { inTurn, pause, sweep, times } from '../../retrieves/moves';
import { place, onTheWater, cautions } from '../fathomley';
import { lowRun } from '../runs';
import { hangs } from './crack';

export default {
  id: 'snags',
  order: 17,
  title: 'Snags',
  minutes: 12,
  about:
    'Sooner or later the hook hangs. Pulling harder drives it home. Stop, slacken, shake, change the angle; and know when to give up without hurting anyone.',
  place,
  objectives: ['Free a hook by slack and small shakes.', 'Say what never to do with a stuck jig.'],
  leaves_out: ['Retriever weights and their handling.'],
  builds_on: ['feeling-rocks'],
  cautions: [cautions.snag, ...onTheWater],
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The hook has caught on the face of a stone.',
      question: {
        ask: 'You go on pulling, further and harder. What happens?',
        hint: 'Which way does the point of the hook look? What does a harder pull do to it?',
        run: lowRun(hangs, sweep(60, 110, 1.5), 2),
        options: [
          {
            id: 'free',
            says: 'It tears free and comes along',
            holds: { travel_m: [0.5, 3] },
            reply:
              'Now and then it does, and then it flies along the line towards somebody. Mostly it does not.'
          },
          {
            id: 'holds',
            says: 'It stays where it is',
            holds: { travel_m: [0, 0.35] },
            reply: 'The pull drives the hook home. From then on shaking no longer helps.'
          },
          {
            id: 'back',
            says: 'It slips backwards off the stone',
            holds: { travel_m: [-2, -0.1] },
            reply: 'That is what slack is for; pulling does the opposite.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The wrong way, and the right one.',
      demos: [
        { id: 'harder', caption: 'Pulled harder.', run: lowRun(hangs, sweep(60, 110, 1.5), 2) },
        {
          id: 'shaken',
          caption: 'Slack, then shaken gently.',
          run: lowRun(
            hangs,
            inTurn(
              sweep(60, 80, 1),
              pause(0.5),
              sweep(80, 50, 1),
              ...times(3, pause(0.7), sweep(50, 71, 0.4), sweep(71, 50, 0.4))
            )
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Hang it on purpose. Then take all the pull away before you do anything else.',
      challenges: ['free-a-snag', 'free-from-above']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'It stops dead and holds', means: 'Hung up. Stop pulling at once.' },
        { sign: 'It gives a little with each shake', means: 'Go on, gently.' },
        { sign: 'Nothing gives', means: 'Change the angle: from the other side, or from above.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A jig you can spare, eye protection for all', 'A padded tool to wrap line on'],
      steps: [
        'Stop. Slacken. Shake three times on slack.',
        'Change the angle: move the boat, not your temper.',
        'Bow and snap the line once or twice.',
        'Last: wrap the line on the padded tool, never on a hand, turn away, everybody clear, and pull it off.'
      ],
      log: ['What freed it', 'Line checked for wear, hook for a dull point']
    }
  ]
};
