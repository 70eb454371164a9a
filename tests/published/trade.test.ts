import { describe, expect, test } from 'vitest';
import { overlaps, tradeRows, type TradeRow } from './trade-cases';

/** Where model and trade disagree. It stays written here and in docs/model.md; nothing is tuned. */
const APART = ['a2'];

const rows = tradeRows();

describe('what practitioners see lies within what the model leaves open (common practice, no source)', () => {
  test.each(rows.filter(({ id }) => !APART.includes(id)).map((row) => [row.id, row.what, row]))(
    '%s: %s',
    (_id, _what, row) => expect(overlaps(row), tableLine(row)).toBe(true)
  );

  test.each(rows.filter(({ id }) => APART.includes(id)).map((row) => [row.id, row.what, row]))(
    '%s: %s — known to disagree',
    (_id, _what, row) => expect(overlaps(row), tableLine(row)).toBe(false)
  );

  test('a heavier jig stays lower, in the median too', () => {
    for (const id of ['c1', 'c2']) {
      expect(rows.find((row) => row.id === id)?.median).toBeGreaterThan(1.1);
    }
  });

  test('the table in docs is this one', async () => {
    await expect(table(rows)).toMatchFileSnapshot('../../docs/trade-check.md');
  });
});

function table(rows: readonly TradeRow[]): string {
  return [
    '# What practitioners see, beside the model',
    '',
    'Made by `tests/published/trade.test.ts` (`npx vitest run tests/published/trade.test.ts -u`',
    'writes it anew). Trade values are common practice without a source. The band is the model over',
    'what nobody knows: slack 0–0.5 m, drag area 3.5–14 cm², clock angle ±10°, effective rod',
    '1.6–1.9 m, cast 18–27 m.',
    '',
    '| | | trade | model: median | model: band | |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows.map(tableLine),
    ''
  ].join('\n');
}

function tableLine(row: TradeRow): string {
  const { id, what, trade, unit, median, band } = row;
  const [low, high] = trade;
  const said =
    high === Infinity
      ? `${low} and more`
      : low === high
        ? `${low}`
        : `${round(low)} … ${round(high)}`;
  const cells = [
    id,
    what,
    `${said} ${unit}`,
    `${round(median)} ${unit}`,
    `${round(band[0])} … ${round(band[1])} ${unit}`,
    overlaps(row) ? '' : '**apart**'
  ];
  return `| ${cells.join(' | ')} |`;
}

function round(value: number): string {
  return (Math.round(value * 10) / 10 || 0).toFixed(1);
}
