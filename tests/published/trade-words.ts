/**
 * What docs/planing.md and docs/model.md say in figures of what practitioners see. Made from
 * docs/trade-check.md by the command that makes that, and compared by a test, so that it cannot go stale.
 */

interface Cell {
  median: number;
  inside: string;
}

interface TradeFigures {
  /** Of each row, what is said and a cell for planing of 0, 0.16, 0.3 and drawn. */
  row: (id: string) => { said: string; cells: Cell[] };
  holding: (name: string) => { hours: Cell[]; joint: string };
  others: (name: string) => string[];
  best: (name: string) => number;
  explained: (answer: 'yes' | 'no', facts: Readonly<Record<string, string>>) => string;
}

const cellsOf = (line: string) => line.split('|').map((cell) => cell.trim());
const CELL = /^(-?[\d.]+)[^,]*?(?:, | \()(\d+ %)/;

function cellOf(text: string): Cell {
  const [, median, inside] = CELL.exec(text) ?? [];
  return { median: Number(median), inside };
}

export function tradeFigures(document: string): TradeFigures {
  const tables = document.split('\n## ').map((part) => part.split('\n').filter(isRow).map(cellsOf));
  const [rows, lifts, session] = tables;
  const found = (table: string[][], name: string) => {
    const names = table.map((cells) => cells[1].replaceAll('`', ''));
    const exact = names.indexOf(name);
    const row = table[exact < 0 ? names.findIndex((one) => one.startsWith(name)) : exact];
    if (!row) throw new Error(`docs/trade-check.md has no row ${name}`);
    return row;
  };
  const holdings = lifts.filter((cells) => cells[5]?.endsWith('%'));
  return {
    row: (id) => {
      const [, , , said, ...cells] = found(rows, id);
      return { said: plain(said), cells: cells.slice(0, 4).map(cellOf) };
    },
    holding: (name) => {
      const cells = found(holdings, name);
      return { hours: cells.slice(2, 5).map(cellOf), joint: cells[5] };
    },
    others: (name) => holdings.filter((cells) => !cells[1].startsWith(name)).map((c) => c[5]),
    best: (name) => Number(found(session, name)[2]),
    explained: (answer, facts) =>
      listed(
        Object.keys(facts)
          .filter((id) => found(session, id)[5] === answer)
          .map((id) => facts[id])
      )
  };
}

/** 2.0 … 2.5 ft is 2–2.5 ft. */
const plain = (said: string) => said.replaceAll('.0', '').replace(' … ', '–');

const isRow = (line: string) => line.startsWith('| ') && !line.startsWith('| ---');

function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('') || 'none';
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

const medians = (cells: readonly Cell[]) => cells.map(({ median }) => median.toFixed(1));

/** Whole sections of docs/planing.md, by their headings. */
export function planingSections(t: TradeFigures): Record<string, string> {
  const [fast, heavy, deep, shallow] = ['f2', 'f1', 'g2', 'g1'].map((id) => t.row(id));
  const [f0, f16, f3] = medians(fast.cells);
  const [d0, d16, d3] = medians(deep.cells);
  const as = t.holding('as said');
  const misread = t.holding('hours misread');
  const less = (name: string) => rangeOf(t.holding(name), as);
  const lifted = ['a1', 'a2', 'a3'].map((id) => t.row(id).cells);
  const most = Math.max(...lifted.map((cells) => cells[2].median - cells[0].median));
  const others = t.others('hours misread').filter((joint) => joint !== '0 %');
  return {
    'What it changes': [
      '[trade-check.md](trade-check.md) has all rows without planing, at 0.16, at 0.3 and over the band. A fast',
      `sweep of a 1/2 oz jig rises ${f0} in (median) without planing, ${f16} in at 0.16 and ${f3} in at 0.3`,
      `(practitioners: ${fast.said}); an easy sweep of 1/4 oz at 13–20 ft ${d0}, ${d16} and ${d3} in`,
      `(${deep.said}). The price: at 0.3 a fast sweep lifts 3/4 oz ${medians(heavy.cells)[2]} in`,
      `(practitioners: ${heavy.said}), and in 7–8 ft of water an easy one lifts 1/4 oz`,
      `${medians(shallow.cells)[2]} in (${shallow.said}). No one value fits all rows.`
    ].join(' '),
    'Two hours of lift': [
      `Planing of 0.3 adds at most ${most.toFixed(1)} ft to the median of one, two or three hours of lift. Of what was`,
      'tried one by one, hours misread so that the rod ends at 18, 35 and 76° bring the medians to',
      `${listed(medians(misread.hours))} ft, and ${misread.joint} of draws fit all three;`,
      others.length === 0
        ? 'nothing else fits any draw to all three.'
        : `of the others ${listed(others)} do.`,
      `Against a rod held as said (${listed(medians(as.hours))} ft), a hand that goes 0.3 m towards the bait`,
      `changes them by ${less('a hand that goes 0.3 m towards')} ft, 10° less in each hour by ${less('each hour 10')},`,
      `slack of 0.5 to 1 m by ${less('slack of')}, longer casts by ${less('casts of')}, a rod that starts 15 or 30°`,
      `below level by ${less('a rod that starts 15')} and ${less('a rod that starts 30')}: the tip then goes`,
      'further, so that explains nothing. The end angles were chosen for this, so they show what would explain',
      'the lifts and not what does: a phone on the rod could tell.'
    ].join(' ')
  };
}

/** From the least to the most that the three medians change, with their sign. */
function rangeOf({ hours }: { hours: Cell[] }, as: { hours: Cell[] }): string {
  const by = hours.map(({ median }, i) => median - as.hours[i].median);
  const [least, most] = [Math.min(...by), Math.max(...by)].map(signed);
  return least === most ? least : `${least} to ${most}`;
}

function signed(value: number): string {
  const rounded = value.toFixed(1);
  if (Number(rounded) === 0) return '0';
  return value > 0 ? `+${rounded}` : rounded.replace('-', '−');
}

/** Drag area of a jig with a trailer that the fit starts from, m². */
const USUAL_M2 = 7e-4;
const SESSION = {
  a1: 'one hour',
  a2: 'two hours',
  a3: 'three hours',
  d: 'the hops',
  e: 'the low sweep’s travel',
  f2: 'a fast sweep’s height',
  f4: 'a slow sweep’s height'
};
const BEYOND = {
  b: 'travel by weight',
  c1: 'the lift’s height of 1/4 oz',
  c2: 'the lift’s height of 3/4 oz',
  f1: 'a fast sweep of 3/4 oz',
  f3: 'a fast sweep of 1/4 oz',
  g1: 'an easy sweep of 1/4 oz in shallow water',
  g2: 'an easy sweep of 1/4 oz in deeper water'
};

/** Items of the list of known faults in docs/model.md, by their first words. */
export function modelItems(t: TradeFigures): Record<string, string> {
  const as = t.holding('as said');
  const fast = t.row('f2');
  const [f0, f16, f3] = medians(fast.cells);
  return {
    'Lifts by the clock.': [
      `Practitioners say that two clock hours move a 1/2 oz jig ${t.row('a2').said}; the model's median is`,
      `${medians(as.hours)[1]} ft, and ${share(as.hours[1].inside)} of what is unknown comes so low. One hour agrees in`,
      `${among(as.hours[0].inside)}, three hours agree in ${among(as.hours[2].inside)}, all three at once in`,
      `${among(as.joint)}. Hours misread by eye would do it; slack, longer casts or a rod that starts below level would`,
      'not ([planing.md](planing.md)). Nothing was changed to hide it.'
    ].join(' '),
    'Fast sweeps': [
      `lift a 1/2 oz jig ${f0} in (median) and practitioners say ${fast.said}: a bait that planes`,
      `([planing.md](planing.md)) brings it to ${f16} in at 0.16 and ${f3} at 0.3, and then lifts the heavy one too far.`
    ].join(' '),
    'All facts as one session.': [
      'Fitted like anybody’s own tests, one set-up explains the facts of the 1/2 oz jig best. Its rod is held',
      `${Math.round(-t.best('elevation_deg'))}° lower than said, with ${t.best('reach_m')} m of reach and`,
      `${Math.round(100 * t.best('slack_m'))} cm of slack. Its drag area is ${(t.best('drag_area_m2') / USUAL_M2).toFixed(1)} times`,
      `the usual, its planing ${t.best('lift_to_drag')}. It explains ${t.explained('yes', SESSION)};`,
      `not ${t.explained('no', SESSION)}. Of what is said of other weights it explains`,
      `${t.explained('yes', BEYOND)}. Angles that far off say that hours are read otherwise than they are held,`,
      'not that the model is right.'
    ].join(' ')
  };
}

const share = (inside: string) => (inside === '0 %' ? 'no draw' : `${inside} of draws`);
const among = (inside: string) => (inside === '0 %' ? 'none' : `${inside} of draws`);

const WIDTH = 112;

function wrapped(text: string, indent: string): string {
  const lines = [''];
  for (const word of text.split(/\s+/)) {
    const last = lines[lines.length - 1];
    if (last !== '' && last.length + word.length + 1 > WIDTH - indent.length) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.join(`\n${indent}`);
}

/** docs/planing.md with its sections made anew. */
export function withSections(document: string, sections: Record<string, string>): string {
  return Object.entries(sections).reduce((text, [heading, words]) => {
    const [before, after] = parted(text, `## ${heading}\n`);
    const next = after.indexOf('\n## ');
    return `${before}\n${wrapped(words, '')}\n${next < 0 ? '' : after.slice(next)}`;
  }, document);
}

/** docs/model.md with items of its list of faults made anew. */
export function withItems(document: string, items: Record<string, string>): string {
  return Object.entries(items).reduce((text, [title, words]) => {
    const [before, after] = parted(text, `- **${title}**`);
    const next = Math.min(
      ...['\n- ', '\n\n'].map((end) => after.indexOf(end)).filter((at) => at >= 0)
    );
    return `${before.slice(0, -title.length - 6)}- ${wrapped(`**${title}** ${words}`, '  ')}${after.slice(next)}`;
  }, document);
}

/** @returns what stands up to the end of `mark`, and what follows it */
function parted(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  if (at < 0) throw new Error(`no ${JSON.stringify(mark)} to write anew`);
  return [text.slice(0, at + mark.length), text.slice(at + mark.length)];
}
