/** As much of Markdown as our own documents are written in. What is typed is never taken as markup. */
export type Block =
  | { kind: 'heading'; level: number; text: Span[] }
  | { kind: 'paragraph'; text: Span[] }
  | { kind: 'list'; items: Span[][] }
  | { kind: 'table'; head: Span[][]; rows: Span[][][] };

export interface Span {
  kind: 'plain' | 'code' | 'strong' | 'em';
  text: string;
}

/** Blocks stand apart by an empty line; a heading is one line. */
export function blocksOf(markdown: string): Block[] {
  return markdown
    .split(/\n\s*\n/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map(blockOf);
}

function blockOf(part: string): Block {
  const [, marks, title] = /^(#+) (.*)$/.exec(part) ?? [];
  if (marks) return { kind: 'heading', level: marks.length, text: spansOf(title) };
  if (part.startsWith('|')) return tableOf(part.split('\n'));
  if (part.startsWith('- ')) {
    const items = part.slice(2).split(/\n- /);
    return { kind: 'list', items: items.map((item) => spansOf(oneLine(item))) };
  }
  return { kind: 'paragraph', text: spansOf(oneLine(part)) };
}

function tableOf([head, , ...rows]: string[]): Block {
  const cells = (row: string) =>
    row
      .replace(/^\||\|$/g, '')
      .split('|')
      .map((cell) => spansOf(cell.trim()));
  return { kind: 'table', head: cells(head), rows: rows.map(cells) };
}

const oneLine = (text: string) => text.replace(/\s*\n\s*/g, ' ');

const SPAN = /`([^`]+)`|\*\*([^*]+)\*\*|\*([^*]+)\*|\[([^\]]+)\]\([^)]*\)/g;

/** Of a link its words alone: it leads to a file beside the source. */
export function spansOf(text: string): Span[] {
  const spans: Span[] = [];
  let at = 0;
  const plain = (to: number) => {
    if (to > at) spans.push({ kind: 'plain', text: text.slice(at, to) });
  };
  for (const match of text.matchAll(SPAN)) {
    plain(match.index);
    const [whole, code, strong, em, link] = match;
    if (code) spans.push({ kind: 'code', text: code });
    else if (strong) spans.push({ kind: 'strong', text: strong });
    else if (em) spans.push({ kind: 'em', text: em });
    else spans.push(...spansOf(link ?? ''));
    at = match.index + whole.length;
  }
  plain(text.length);
  return spans;
}

/** What stands under a heading, up to the next of its level or above; empty where there is none. */
export function sectionOf(blocks: readonly Block[], title: string): Block[] {
  const isTitle = (block: Block) =>
    block.kind === 'heading' && block.text.map(({ text }) => text).join('') === title;
  const begin = blocks.findIndex(isTitle);
  const heading = blocks[begin];
  if (heading?.kind !== 'heading') return [];
  const rest = blocks.slice(begin + 1);
  const end = rest.findIndex((one) => one.kind === 'heading' && one.level <= heading.level);
  return end < 0 ? rest : rest.slice(0, end);
}
