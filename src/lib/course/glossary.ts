import * as v from 'valibot';
import { name, parseData, text } from '../scoring';

/** A word of the trade, in a sentence or two, with the lesson that says more. */
const termSchema = v.strictObject({ term: text, means: text, lesson: name });
export type Term = v.InferOutput<typeof termSchema>;

const term = (word: string, lesson: string, means: string): Term => ({ term: word, means, lesson });

/** In the order of the alphabet. */
const TERMS: readonly Term[] = [
  term(
    'bias',
    'your-hands-ruler',
    'How far a hand is off on average, and to which side. Mean less, or more.'
  ),
  term('bow', 'slack', 'The curve that its weight, water and wind give a line. It hides slack.'),
  term(
    'braid',
    'line-and-rod',
    'A woven line: floats, hardly stretches, carries feel best, bows in wind, cuts on rock.'
  ),
  term('cadence', 'season-and-mood', 'The rhythm of moves and rests.'),
  term('clock', 'the-clock', 'The rod as the hand of a clock: nine is level, twelve is upright.'),
  term('contact', 'speed', 'The jig touches the bottom. Drawn as a solid mark.'),
  term(
    'count',
    'from-the-boat',
    'Seconds from the splash until the line goes slack. It tells depth.'
  ),
  term('dead-stick', 'season-and-mood', 'To let the jig lie and do nothing, for long.'),
  term('drag', 'one-foot', 'To draw the jig along the bottom with the rod low and to the side.'),
  term('fall', 'stroke-and-fall', 'The jig sinks: freely, or on a tight line like a pendulum.'),
  term(
    'fluorocarbon',
    'line-and-rod',
    'A clear line that sinks, resists rubbing, and stretches somewhat.'
  ),
  term('hop', 'hops', 'A short, quick lift, then a fall, then a rest.'),
  term('leader', 'line-and-rod', 'A length of other line between main line and jig.'),
  term('lift', 'the-clock', 'To turn the rod upward, in line with the jig.'),
  term('mush', 'bite-or-bottom', 'A soft, springy weight: weed, or a fish that has the jig.'),
  term('nylon', 'line-and-rod', 'A line nearly as heavy as water: bows, stretches, forgives.'),
  term(
    'pendulum',
    'from-the-boat',
    'A jig that falls on a tight line and swings in towards the boat.'
  ),
  term('semi-slack', 'stroke-and-fall', 'A line just short of tight: the jig falls, and you feel.'),
  term('shake', 'season-and-mood', 'To twitch the slack so that the jig hardly leaves its place.'),
  term('slack', 'slack', 'Line that is longer than the way from tip to jig.'),
  term('snag', 'snags', 'The hook hangs in something. Slacken, shake, change the angle.'),
  term(
    'spread',
    'your-hands-ruler',
    'How far a hand’s tries are apart. Slower practice makes it smaller.'
  ),
  term('stroke', 'stroke-and-fall', 'A hard snap upward, then a fall under control.'),
  term('sweep', 'one-foot', 'To turn a low rod to the side.'),
  term('swim', 'season-and-mood', 'To reel the jig along steadily, a little above the bottom.'),
  term('tip', 'your-hands-ruler', 'The end of the rod: what the jig follows.'),
  term('travel', 'one-foot', 'How far the jig came along the bottom. Towards you counts as more.')
];

/** The glossary. Throws DataError for a term that is not one. */
export function glossary(): Term[] {
  return parseData(v.array(termSchema), TERMS);
}
