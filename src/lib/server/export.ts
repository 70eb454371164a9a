import { OBJECTIVES } from '../course/items';
import { parseSetup } from '../model';
import { figureOfReply, guessOf, planOf } from '../practice';
import {
  figureNumber,
  figureOf,
  formatDepth,
  formatLength,
  formatShare,
  formatWeight,
  inUnits,
  wordsOf,
  type Challenge,
  type Units
} from '../scoring';
import {
  csvTable,
  type Assignment,
  type Cell,
  type Client,
  type ClientProgress,
  type KeptAnswer,
  type KeptTry,
  type LawnSets
} from '../wire';

/** How a guide reads times and figures. */
export interface ExportedFor {
  units: Units;
  /** IANA name of the reader's time zone. */
  zone: string;
}

/** What belongs to tries and what to answers side by side; "Kind" says which a line is. */
const HEAD = [
  ...(['Client', 'Kind', 'Task', 'Made', 'Received', 'Late', 'Right'] as const),
  ...(['Try', 'Jig hidden', 'Jig', 'Depth', 'Marks', 'Phone said otherwise'] as const),
  ...(['Figure', 'Reached', 'Unit', 'Asked from', 'Asked to'] as const),
  ...(['Tip went', 'Tip unit', 'All goals', 'On the bottom', 'Guess'] as const),
  ...(['Question', 'Answer', 'Right answer', 'Came by', 'Model'] as const)
];
type Line = Partial<Record<(typeof HEAD)[number], Cell>>;

/** Spreadsheets take the letters of a file without it for those of one country. */
const BYTE_ORDER_MARK = '\uFEFF';

/** Every try, answer and word of every client, one a line, and who has not begun. Throws RangeError for a zone that is none. */
export function homeworkTable(
  clients: readonly ClientProgress[],
  { phase, due }: Pick<Assignment, 'phase' | 'due'>,
  { units, zone }: ExportedFor
): string {
  const moment = momentIn(zone);
  const nameOf = namesOf(
    clients.map(({ client }) => client),
    moment
  );
  const lines = clients.flatMap(({ client, challenges, objectives, lawn, words }) => {
    const made = (at: string): Line => ({
      Client: nameOf(client),
      Made: moment(at),
      Late: yes(due !== null && moment(at).slice(0, due.length) > due)
    });
    const dated = ({ sent, received_at }: KeptTry | KeptAnswer): Line => ({
      ...made(sent.at),
      Received: moment(received_at)
    });
    const tries = challenges.flatMap(({ challenge, tries }) =>
      tries.map((one, n) => ({
        ...dated(one),
        Try: n + 1,
        'Jig hidden': yes(planOf(phase, n).isHidden),
        ...tryLine(challenge, one, units)
      }))
    );
    const answers = objectives.flatMap(({ answers }) =>
      answers.map((one) => ({ ...dated(one), ...answerLine(one, units) }))
    );
    const drags = lawn ? lawnLines(lawn, made, units) : [];
    const written = words.map(({ text, at }) => ({ ...made(at), Kind: 'word', Answer: text }));
    const all: Line[] = [...tries, ...answers, ...drags, ...written];
    return all.length > 0 ? all : [{ Client: nameOf(client), Kind: 'not begun' }];
  });
  return BYTE_ORDER_MARK + csvTable(HEAD, lines);
}

const yes = (is: boolean) => (is ? 'yes' : 'no');

function tryLine(challenge: Challenge, { sent, graded }: KeptTry, units: Units): Line {
  const { bait, water } = parseSetup(challenge.setup);
  const figure = figureOf(challenge);
  const inUnit = (value: number | null) =>
    value === null ? null : figureNumber(figure, value, units);
  const tip = graded.mark && figureNumber({ unit: 'm' }, graded.mark.tip_m, units);
  const [from, to] = figure.asked ?? [null, null];
  return {
    Kind: 'try',
    Task: challenge.title,
    Jig: plain(formatWeight(bait.mass_kg, units)),
    Depth: plain(formatDepth(water.depth_m, units)),
    Marks: graded.marks,
    'Phone said otherwise': graded.agrees ? '' : sent.marks,
    Right: yes(graded.passed),
    Figure: figure.name,
    Reached: inUnit(figureOfReply(figure, graded))?.value,
    Unit: figureNumber(figure, 0, units).unit,
    'Asked from': inUnit(from)?.value,
    'Asked to': inUnit(to)?.value,
    'Tip went': tip?.value,
    'Tip unit': tip?.unit,
    'All goals': goalsText(challenge, graded.reached ?? [], units),
    'On the bottom': plain(formatShare(graded.contact)),
    Guess: guessCell(challenge, sent, units),
    Model: graded.model
  };
}

/** "Travel: 11 in; Contact: 95 %": what was reached of each goal. */
function goalsText(
  { goals }: Challenge,
  reached: readonly (number | null)[],
  units: Units
): string {
  const said = goals.flatMap((goal, i) => {
    const value = reached[i];
    if (value === null || value === undefined) return [];
    const words = wordsOf(goal, value, units);
    return [`${words.name}: ${words.reached} (${words.asked})`];
  });
  return plain(said.join('; '));
}

function guessCell(challenge: Challenge, sent: KeptTry['sent'], units: Units): string {
  const guess = guessOf(sent, challenge);
  if (guess?.kind === 'down') return guess.isDown ? 'on the bottom' : 'still falling';
  if (guess?.kind === 'height') return plain(formatLength(guess.height_m, units));
  if (guess?.kind !== 'travel') return '';
  const lifted = guess.lifted === undefined ? '' : guess.lifted ? ', lifted' : ', stayed down';
  return plain(formatLength(guess.travel_m, units)) + lifted;
}

function answerLine({ sent, graded }: KeptAnswer, units: Units): Line {
  const { says } = graded;
  const about = OBJECTIVES.find(({ id }) => id === graded.objective)?.says ?? graded.objective;
  const text = (words: string) => plain(inUnits(words, units));
  return {
    Kind: 'answer',
    Task: about,
    Right: yes(graded.right),
    'Phone said otherwise': graded.agrees ? '' : yes(sent.right),
    Question: says ? text(says.ask) : `${sent.item} ${sent.seed}`,
    Answer: says ? text(says.given) : [sent.given].flat().join(', '),
    'Right answer': says ? text(says.key) : '',
    'Came by': sent.report,
    Model: graded.model
  };
}

/** Each drag on the lawn a line, in the unit of the screen's travel. */
function lawnLines({ meant_m, sets }: LawnSets, made: (at: string) => Line, units: Units): Line[] {
  const number = (m: number) => figureNumber({ unit: 'm' }, m, units);
  return sets.flatMap(({ at, moved_m }) =>
    moved_m.map((moved, n) => ({
      ...made(at),
      Kind: 'real rod',
      Task: 'Ten on the lawn',
      Try: n + 1,
      Figure: 'How far the jig went',
      Reached: number(moved).value,
      Unit: number(moved).unit,
      'Asked from': number(meant_m).value,
      'Asked to': number(meant_m).value
    }))
  );
}

/** Spreadsheets show a space that does not break as a strange letter, or sort by it. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

/** A time as the reader's clock has it, in an order that sorts: "2031-05-09 08:05". */
function momentIn(timeZone: string): (iso: string) => string {
  const style = { dateStyle: 'short', timeStyle: 'short', timeZone } as const;
  const format = new Intl.DateTimeFormat('sv-SE', style);
  return (iso) => format.format(new Date(iso));
}

/**
 * Names that tell clients apart: two of one name have a number, as they came, and the time when they were
 * first seen beside it, which two in one boat may share.
 */
function namesOf(clients: readonly Client[], moment: (iso: string) => string) {
  const plainly = ({ nickname }: Client) => nickname.trim().toLowerCase();
  const asTheyCame = [...clients].sort((a, b) => (a.joined_at < b.joined_at ? -1 : 1));
  return (client: Client): string => {
    const alike = asTheyCame.filter((one) => plainly(one) === plainly(client));
    if (alike.length === 1) return client.nickname;
    const number = alike.findIndex(({ id }) => id === client.id) + 1;
    return `${client.nickname} ${number} (first seen ${moment(client.joined_at)})`;
  };
}

/** "before-saturday-2031-05-09.csv", by the reader's day. */
export function exportName(title: string, at: string, zone: string, ending: string): string {
  const letters = title.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const name = letters.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'homework';
  const [day] = momentIn(zone)(at).split(' ');
  return `${name.slice(0, 60)}-${day}.${ending}`;
}
