import * as v from 'valibot';
import { name, parseData, text } from '../scoring';

/**
 * A word of the trade, in a sentence or two, with the lesson that says more. `basis`: how the word is used,
 * by common practice, or what of its meaning a run of that lesson shows, in the lesson's own words.
 */
const termSchema = v.strictObject({
  term: text,
  means: text,
  lesson: name,
  basis: v.union([v.literal('practice'), v.strictObject({ claim: text })])
});
export type Term = v.InferOutput<typeof termSchema>;

const term = (word: string, lesson: string, means: string, claim?: string): Term => ({
  term: word,
  means,
  lesson,
  basis: claim === undefined ? 'practice' : { claim }
});

/** In the order of the alphabet. */
const TERMS: readonly Term[] = [
  term(
    'baitcaster',
    'from-the-boat',
    'A reel whose spool turns. Push the button for free spool and thumb the spool as it runs.'
  ),
  term(
    'belly',
    'slack',
    'The curve that weight, water and wind put in a line. It hides slack.',
    'Here slack takes its share first.'
  ),
  term('bias', 'your-hands-ruler', 'How far your tries are off on average, and which way.'),
  term('bobber stop', 'first-drop', 'A small knot or bead on the line. Watch it as the jig falls.'),
  term(
    'braid',
    'line-and-rod',
    'Woven line: floats, hardly stretches, feels the most, bellies in wind, gets cut on rock.',
    'Mono and fluorocarbon stretch, braid hardly does.'
  ),
  term('cadence', 'season-and-mood', 'Your rhythm of moves and pauses.'),
  term('clock', 'the-clock', 'The rod as a clock hand: nine is level, twelve is straight up.'),
  term('contact', 'speed', 'The jig is touching bottom. Drawn as a solid dot and a solid trail.'),
  term(
    'count',
    'from-the-boat',
    'Seconds from the splash until the line stops running out: how deep.'
  ),
  term('dead-stick', 'season-and-mood', 'Let the jig sit and do nothing, for a long time.'),
  term(
    'descending device',
    'safety',
    'A weighted clip or cage that takes a bloated fish down and lets it go there.'
  ),
  term(
    'drag',
    'one-foot',
    'Pull the jig along the bottom with the rod low and to the side.',
    'Your rod tip moves the jig.'
  ),
  term(
    'engage',
    'from-the-boat',
    'Put the reel in gear so it holds line. Spinning reel: bail closed. Baitcaster: turn the handle.'
  ),
  term('fall', 'stroke-and-fall', 'The jig sinks: free, or on a tight line like a pendulum.'),
  term(
    'fluorocarbon',
    'line-and-rod',
    'Clear line that sinks, resists abrasion, and stretches some.'
  ),
  term('football head', 'rigging', 'A wide, oval jig head. It rolls over rock.'),
  term(
    'free spool',
    'from-the-boat',
    'The reel gives line as the jig falls: open bail, or button down.'
  ),
  term('graph', 'season-map', 'The sonar on the boat: depth, bottom, fish.'),
  term(
    'hook set',
    'hook-set',
    'A sweep that drives the point into the fish’s mouth. Slack: reel down first. Tight: some sweep at once, some reel a turn.'
  ),
  term('hop', 'hops', 'A short, quick lift, then a fall, then a pause.'),
  term('hump', 'offshore', 'A rise in the bottom with deeper water all around.'),
  term('leader', 'line-and-rod', 'A length of other line between your main line and the jig.'),
  term('ledge', 'offshore', 'An edge where the bottom drops off to deeper water.'),
  term('lift', 'the-clock', 'Raise the rod in line with the jig.'),
  term(
    'mono',
    'line-and-rod',
    'Line that nearly floats: it stretches and forgives.',
    'Mono and fluorocarbon stretch, braid hardly does.'
  ),
  term('mush', 'bite-or-bottom', 'A soft, springy weight: weeds, or a fish that has the jig.'),
  term(
    'pendulum',
    'from-the-boat',
    'A jig that falls on tight line and swings in toward the boat.',
    'A tight line makes it a pendulum'
  ),
  term('pound test', 'line-and-rod', 'The pull a line is rated for.'),
  term('reel drag', 'hook-set', 'The brake in the reel: it gives line before the line breaks.'),
  term(
    'retrieve',
    'season-map',
    'How you bring the jig back: drag, hop, stroke, shake, swim or dead-stick.'
  ),
  term(
    'semi-slack line',
    'stroke-and-fall',
    'Just short of tight: the jig falls free, and you still see a bite.'
  ),
  term('shake', 'season-and-mood', 'Twitch the slack so the jig hardly leaves its place.'),
  term('skirt', 'rigging', 'The strands around a jig’s hook. More of it slows the fall.'),
  term(
    'slack',
    'slack',
    'Extra line between tip and jig.',
    'It decides how much of a move reaches the jig.'
  ),
  term('snag', 'snags', 'The jig hangs on something. Give slack, shake, change the angle.'),
  term(
    'spinning reel',
    'first-drop',
    'A reel with a still spool under the rod. Bail open: free spool.'
  ),
  term(
    'spread',
    'your-hands-ruler',
    'How far apart your tries are. Slow down till they tighten up.'
  ),
  term('stroke', 'stroke-and-fall', 'A hard snap up, then a fall under control.'),
  term('sweep', 'one-foot', 'Swing a low rod to the side.'),
  term('swim', 'season-and-mood', 'Reel the jig along steadily, a little off bottom.'),
  term(
    'thermocline',
    'offshore',
    'Where warm water meets cold in summer. Often too little oxygen below it.'
  ),
  term(
    'tip',
    'your-hands-ruler',
    'The end of the rod: what the jig follows.',
    'The jig follows the tip, not the hand.'
  ),
  term(
    'trailer',
    'rigging',
    'The soft plastic behind the jig. Small: a trimmed chunk. Big: a full craw with flapping claws. Bigger ones slow the fall.',
    'More water to push aside'
  ),
  term('travel', 'one-foot', 'How far the jig came along the bottom. Toward you is plus.'),
  term(
    'weedguard',
    'rigging',
    'Bristles that keep the hook off brush. Too stiff, it costs hookups.'
  )
];

/** The glossary. Throws DataError for a term that is not one. */
export function glossary(): Term[] {
  return parseData(v.array(termSchema), TERMS);
}
