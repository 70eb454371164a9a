import { ft } from '../../items/draw';
import { inTurn, lift, pause, reel, sweep, times } from '../../retrieves/moves';
import { SEASON_MAP } from '../../season-map';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const waterAt = (temperature_C: number) =>
  deeperWith({ temperature_C, start: { bait_x_m: ft(50), slack_m: 0.05 } });
const cold = lowRun(waterAt(6), inTurn(sweep(60, 70, 2.5), pause(10), sweep(70, 80, 2.5)));
const cool = uprightRun(
  waterAt(13),
  20,
  inTurn(
    lift(20, 32, 3),
    pause(4),
    lift(32, 43, 0.25),
    lift(43, 34, 0.6),
    pause(4),
    lift(34, 44, 3)
  )
);
/** Snap, follow it down, reel up what that left slack; so many times. */
const strokes = (count: number) =>
  inTurn(
    ...times(count, lift(15, 75, 0.45), pause(0.1), lift(75, 15, 1.8), pause(0.7), reel(1.4, 2))
  );
const warm = uprightRun(waterAt(26), 15, strokes(3));

const [winter, spring, after, summer] = SEASON_MAP;
const upperFirst = (text: string) => text[0].toUpperCase() + text.slice(1);
const mapped = ({ where, inSpawn, inFall, retrieve, pause: waits }: typeof winter) => {
  const spots = inSpawn
    ? `Spring, {60 to 70 °F|15 to 20 °C}: ${inSpawn} ${where}`
    : upperFirst(where);
  return `${spots}${inFall ? `, ${inFall}` : ''}. ${upperFirst(retrieve)}, waits of ${waits}.`;
};

export default {
  id: 'season-map',
  order: 20,
  title: 'The season map',
  minutes: 8,
  about:
    'Surface temperature says where to look first and how to start. When a spot is empty, move first: a change of retrieve can’t fix it.',
  place: deepPlace,
  objectives: ['Know where to start, and with what.', 'Know when to move first and when to stay.'],
  leaves_out: ['Rivers and tides.'],
  claims: [
    { says: 'a change of retrieve can’t fix it', basis: 'practice' },
    {
      says: [
        'They’re moving up to spawn, and stop there on the way.',
        'That’s winter.',
        'At {54 °F|12 °C} and rising they’re on the move.',
        'That’s summer.',
        'At {54 °F|12 °C} and rising they stage on points on the way to the pockets.',
        'A channel swing is where the old riverbed runs against a bank.',
        'A pocket is a small cove.'
      ],
      basis: 'practice'
    },
    {
      says: [
        'Surface temperature says where to look first and how to start.',
        'When a spot is empty, move first',
        'Where to start.',
        'Lakes differ.',
        'In spring, at {60 to 70 °F|15 to 20 °C}, many fish are on beds: check your rules.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'Lift slowly, so it slides along bottom.',
    'Wait 3 seconds or more, then one hop, {3 to 8 in|8 to 20 cm} high, and lower the rod.'
  ],
  builds_on: ['hops', 'stroke-and-fall', 'offshore'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Spring. {54 °F|12 °C} at the surface, and rising. A channel swing is where the old riverbed runs against a bank. A pocket is a small cove.',
      question: {
        ask: 'Where do you look first?',
        hint: 'What are they getting ready for?',
        practice: 'points',
        run: cool,
        options: [
          {
            id: 'deep',
            says: 'Channel-swing banks and deep edges',
            reply: 'That’s winter. At {54 °F|12 °C} and rising they’re on the move.'
          },
          {
            id: 'points',
            says: 'Points near spawning pockets',
            reply: 'Right. They’re moving up to spawn, and stop there on the way.'
          },
          {
            id: 'offshore',
            says: 'Offshore ledges and humps',
            reply:
              'That’s summer. At {54 °F|12 °C} and rising they stage on points on the way to the pockets.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'cold', caption: 'Cold: a short drag, a long wait.', run: cold },
        { id: 'cool', caption: 'Cool: a drag, a wait, a short hop.', run: cool },
        { id: 'warm', caption: 'Warm: strokes, and reel.', run: warm }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['drag-wait-hop', 'two-strokes']
    },
    {
      kind: 'feel',
      title: 'The map',
      text: 'Where to start. Lakes differ. In spring, at {60 to 70 °F|15 to 20 °C}, many fish are on beds: check your rules.',
      day: 1,
      cues: [
        { sign: winter.says, means: mapped(winter), basis: 'practice' },
        { sign: spring.says, means: mapped(spring), basis: 'practice' },
        { sign: after.says, means: mapped(after), basis: 'practice' },
        {
          sign: summer.says,
          means: `${mapped(summer)} Some guides drag instead. Stay above the thermocline, where warm water meets cold.`,
          basis: 'practice'
        },
        {
          sign: 'Ten good casts, no bites, no fish on the graph',
          means: 'Move first.',
          basis: 'practice'
        },
        {
          sign: 'Fish on the graph, or one bite',
          means: 'Stay, and change one thing.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['A graph or a thermometer', 'A lake map', 'A watch'],
      steps: [
        'Read the surface temperature. Mark three spots from the map.',
        'Ten casts at the first. Then move, or stay?'
      ],
      log: ['Temperature, spots, casts at each', 'Why you moved']
    }
  ]
};
