import type { CardRow, CardSize } from '$lib/wire';

export const SIZES: readonly { value: CardSize; name: string }[] = [
  { value: 'letter', name: 'Letter' },
  { value: 'a4', name: 'A4' },
  { value: 'a6', name: 'A6' }
];

export const ROW_NAMES: Record<CardRow, string> = {
  moves: 'Rod to jig',
  limits: 'Stays down',
  falls: 'Count it down',
  hand: 'Your hand',
  bites: 'Bite or bottom',
  bottoms: 'Bottoms by feel',
  snag: 'Snagged',
  fish: 'Fish care',
  cautions: 'What can hurt'
};

/** What fits one page of each size at a print that is read at arm’s length. */
export const ROWS_OF: Record<CardSize, readonly CardRow[]> = {
  letter: ['moves', 'limits', 'falls', 'hand', 'bites', 'bottoms', 'snag', 'fish', 'cautions'],
  a4: ['moves', 'limits', 'falls', 'hand', 'bites', 'bottoms', 'snag', 'fish', 'cautions'],
  a6: ['moves', 'limits', 'falls', 'hand']
};
