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
const mapped = ({ where, inFall, retrieve, pause: waits }: typeof winter) =>
  `${where[0].toUpperCase()}${where.slice(1)}${inFall ? `, ${inFall}` : ''}. ${retrieve[0].toUpperCase()}${retrieve.slice(1)}, waits of ${waits}.`;

export default {
  id: 'season-map',
  order: 20,
  title: 'The season map',
  minutes: 7,
  about:
    'Surface temperature says where to look first and how to start. When a spot is empty, move first: a change of retrieve can’t fix it.',
  place: deepPlace,
  objectives: ['Know where to start, and with what.', 'Know when to move first and when to stay.'],
  leaves_out: ['Rivers and tides.'],
  claims: [
    { says: ['The reel keeps what the rod gained.'], basis: 'practice' },
    { says: 'a change of retrieve can’t fix it', basis: 'practice' },
    {
      says: 'In cold water you cover less',
      basis: { most: 'travel_m', of: ['warm', 'cool', 'cold'] }
    },
    {
      says: ['so the spot counts most.', 'Guides see {3 to 4 ft|90 to 120 cm} a stroke'],
      basis: 'practice'
    },
    {
      says: 'cold-water drags cover about {2 ft|60 cm}.',
      basis: { run: 'cold', holds: { travel_m: [0.46, 0.76] } }
    },
    {
      says: [
        'One stroke alone brings it more.',
        'It only gets the line that rod and reel take in: about {6 ft|1.8 m} a stroke.',
        'the model says about {6 ft|1.8 m}.'
      ],
      basis: { run: 'one-stroke', holds: { travel_m: [1.5, 2.1] } }
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
    'Now it’s summer:',
    'Drag it slowly, wait 3 seconds or more, then one hop, {3 to 8 in|8 to 20 cm} high.'
  ],
  proofs: [{ id: 'one-stroke', run: uprightRun(waterAt(26), 15, strokes(1)) }],
  builds_on: ['hops', 'stroke-and-fall', 'offshore'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'In 15 seconds, cold-water drags cover about {2 ft|60 cm}. Now it’s summer: three strokes, the slack reeled up after each.',
      question: {
        ask: 'How much bottom does that cover?',
        hint: 'The reel keeps what the rod gained.',
        run: warm,
        options: [
          {
            id: 'little',
            says: 'About as much',
            holds: { travel_m: [0.46, 0.76] },
            reply: 'One stroke alone brings it more.'
          },
          {
            id: 'some',
            says: 'Several times as much',
            // From half the model’s least, as guides see it, to its most.
            holds: { travel_m: [2.7, 6.1] },
            reply:
              'Right. In cold water you cover less, so the spot counts most. Guides see {3 to 4 ft|90 to 120 cm} a stroke; the model says about {6 ft|1.8 m}.'
          },
          {
            id: 'all',
            says: 'The whole cast',
            holds: { travel_m: [10, 14] },
            reply: 'It only gets the line that rod and reel take in: about {6 ft|1.8 m} a stroke.'
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
          means: `${mapped(summer)} Some guides drag instead. Stay above the thermocline.`,
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
