import { expect, test } from 'vitest';
import type { Trace } from '../../src/lib/model';
import { nameGhost } from '../../src/lib/sandbox/draw/ghost';
import type { Ink } from '../../src/lib/sandbox/palette';
import type { Backdrop } from '../../src/lib/sandbox/stage';
import type { View } from '../../src/lib/sandbox/view';

/** Words over the mark of a try that ended at −11 m, while the bait is at `bait_x_m`, at 100 px a metre. */
function wordsWithBaitAt(bait_x_m: number): string[] {
  const written: string[] = [];
  const context = new Proxy({} as Record<string | symbol, unknown>, {
    get: (_, name) => (text: string) => name === 'fillText' && written.push(text)
  }) as unknown as CanvasRenderingContext2D;
  const view: View = { scale: 100, width: 390, height: 200, x0: -900, y0: -150 };
  const trace = { bait_x_m: [-12, -11], bait_z_m: [-3, -3] } as unknown as Trace;
  nameGhost(context, view, { baitRadius_m: 0.01 } as Backdrop, trace, bait_x_m, {} as Ink);
  return written;
}

test('the mark of the last try is called so', () => {
  expect(wordsWithBaitAt(-12)).toEqual(['last try']);
});

test('no word stands over a bait that lies where it ended', () => {
  expect(wordsWithBaitAt(-11.1)).toEqual([]);
});
