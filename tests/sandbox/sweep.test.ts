import { expect, test } from 'vitest';
import { paintSweepBack, sweepView } from '../../src/lib/sandbox/draw/sweep';
import type { Ink } from '../../src/lib/sandbox/palette';
import { stageOf } from '../../src/lib/sandbox/stage';
import { smallWater } from './waters';

/** All that is written into a picture of this size. */
function writtenIn(width: number, height: number): string[] {
  const written: string[] = [];
  const context = new Proxy({} as Record<string | symbol, unknown>, {
    get: (_, name) => (text: string) => name === 'fillText' && written.push(text)
  });
  const start = { elevation_deg: 0, azimuth_deg: 45 };
  const stage = stageOf({
    setup: smallWater(),
    plane: 'sweep',
    start,
    units: 'metric',
    target: null,
    ghosts: []
  });
  const view = sweepView(stage, width, height);
  paintSweepBack(context as unknown as CanvasRenderingContext2D, view, stage, {} as Ink);
  return written;
}

test('beside the dial stands from where the bait comes, which stays true as it comes in', () => {
  const written = writtenIn(330, 240);
  expect(written.filter((text) => text.endsWith('°'))).toHaveLength(4);
  expect(written.at(-1)).toMatch(/^from .*\sm out$/);
});

test('in a narrow picture nothing is written over the dial, and no degrees under the tip’s way', () => {
  expect(writtenIn(200, 240)).toEqual(['30°', '60°']);
});
