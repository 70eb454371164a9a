import { expect, test } from 'vitest';
import { keepUnfinished, unfinishedOn } from '../../../src/lib/app/log/unfinished';

function shelf(kept = new Map<string, string>()) {
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key)
  };
}
const NOTHING = { drop_ms: null, look: { move: 0, out: '', travel: '', height: '' } };

test('a running drop and a half typed look outlive the page, each without the other', () => {
  const one = shelf();
  const look = { move: 2, out: '40 ft', travel: '1', height: '' };
  keepUnfinished(one, { look });
  keepUnfinished(one, { drop_ms: 1_900_000_000_000 });
  expect(unfinishedOn(shelf(one.kept))).toEqual({ look, drop_ms: 1_900_000_000_000 });
  keepUnfinished(one, { drop_ms: null });
  expect(unfinishedOn(one)).toEqual({ look, drop_ms: null });
});

test('what cannot be read, or kept, is nothing begun', () => {
  const torn = shelf();
  torn.setItem('feltfoot-unfinished-spell', '{"drop_ms":"soon","look":{"move":99}}');
  expect(unfinishedOn(torn)).toEqual(NOTHING);
  torn.setItem('feltfoot-unfinished-spell', '{');
  expect(unfinishedOn(torn)).toEqual(NOTHING);
  const full = {
    ...torn,
    setItem() {
      throw new Error('full');
    }
  };
  expect(() => keepUnfinished(full, { drop_ms: 1 })).not.toThrow();
});
