import { lift } from '../../retrieves/moves';
import { waterWith, place, onTheWater } from '../fathomley';
import { uprightRun } from '../runs';

const far = waterWith({ start: { bait_x_m: 18, slack_m: 0.05 } });

export default {
  id: 'the-clock',
  order: 8,
  title: 'The clock',
  minutes: 12,
  about:
    'Guides speak of the rod as the hand of a clock: nine is level, twelve is upright. Equal hours do not move the jig equally. Here you see what each hour does, and why the last adds more than the first.',
  place,
  objectives: [
    'Say what one hour of lift does at nine and what it does at eleven.',
    'Lift a jig, and follow it down.'
  ],
  leaves_out: ['How high each hop should be: lesson 9.', 'Sweeps to the side: lesson 1.'],
  builds_on: ['safety', 'from-the-boat'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The line is just tight. The rod points at the jig, {depth:18} out.',
      question: {
        ask: 'You lift the rod evenly from nine to twelve. How far does the jig come?',
        hint: 'Where is the tip at nine, and where at twelve? Count how far it went up, and how far back.',
        run: uprightRun(far, 0, lift(0, 90, 2.5)),
        options: [
          {
            id: 'one',
            says: 'About {length:1.2}',
            holds: { travel_m: [0.8, 1.6] },
            reply: 'That would be so if only the last hour counted. It counts most, but not alone.'
          },
          {
            id: 'two',
            says: 'About {length:2}: the length of the rod',
            holds: { travel_m: [1.8, 2.2] },
            reply:
              'The tip rises by the length of the rod, but it also comes back by that length; together that takes up more line.'
          },
          {
            id: 'more',
            says: 'About {length:2.6}: more than the rod is long',
            holds: { travel_m: [2.3, 3.2] },
            reply:
              'The tip goes up and comes back, and both take up line. Most of it comes from the hours near twelve, when the tip moves straight away from the jig.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Three lifts of one hour each, equally long in time. Compare how far the jig goes.',
      demos: [
        { id: 'first', caption: 'Nine to ten.', run: uprightRun(far, 0, lift(0, 30, 1.5)) },
        { id: 'second', caption: 'Ten to eleven.', run: uprightRun(far, 30, lift(30, 60, 1.5)) },
        { id: 'third', caption: 'Eleven to twelve.', run: uprightRun(far, 60, lift(60, 90, 1.5)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Begin with one slow hour. Then lift, and lower the rod as the jig falls.',
      challenges: ['one-hour', 'lift-and-follow']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'The rod loads late in the lift', means: 'The early part took up slack and bow.' },
        { sign: 'The tip springs up without weight', means: 'The jig is off the bottom already.' },
        {
          sign: 'You lower the rod and the line keeps just short of tight',
          means: 'Good: it falls where it is, and you would notice a bite.'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: [
        'Your rod, no hook on the line',
        'A wall or a post to mark the hours on',
        'Clear overhead and all round'
      ],
      steps: [
        'Lift from nine to ten with eyes shut. Open them: which hour is it?',
        'Ten times, then the same from ten to eleven.',
        'On the water: one lift of one hour, follow down, wait.'
      ],
      log: ['Where the rod really stood, ten times', 'On the water: what you felt at each hour']
    }
  ]
};
