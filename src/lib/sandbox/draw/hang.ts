import type { RunEvent } from '$lib/model';
import { WORDS_PX } from '../close-up';
import type { Ink } from '../palette';
import type { Backdrop, Moment } from '../stage';
import { pixelX, pixelY, type View } from '../view';
import { setFigures } from './type';

/** What a snag asks, drawn at the hook: that it hangs, and then that it comes free. */

export type Hang = 'loose' | 'hung' | 'free' | 'broken';

const AFTER: Partial<Record<RunEvent['kind'], Hang>> = {
  snag: 'hung',
  freed: 'free',
  break: 'broken'
};

/** Whether hung or free is to be seen: as a task asks, or, without one, wherever a hook can hang. */
export const showsHang = ({ target, setup }: Pick<Backdrop, 'target' | 'setup'>): boolean =>
  target ? target.freed === true : setup.bottom.snags;

/** How the hook stands `t_s` after the start. */
export function hangAt(events: readonly RunEvent[], t_s: number): Hang {
  return events
    .filter((event) => event.t_s <= t_s)
    .reduce<Hang>((hang, { kind }) => AFTER[kind] ?? hang, 'loose');
}

/** What each step of the goal is called, and how the hook stands when it is done. */
const STEPS = [
  { name: 'hung', done: ['hung', 'free'] },
  { name: 'free', done: ['free'] }
] as const;
/** The two marks: radius, how far from the top and right edge, and from one to the next, px. */
const MARK = { radius: 5, edge: 14, apart: 62 } as const;
/** In a narrower picture its caption takes the first line. */
const NARROW_PX = 480;
/** A ring round a hook that hangs, px. */
const RING = 22;

/** A mark for each step, filled when it is done, and a ring with its word round a hook that hangs. */
export function drawHang(
  context: CanvasRenderingContext2D,
  view: View,
  { events, pose }: Moment,
  ink: Ink
): void {
  const hang = hangAt(events, pose.t_s);
  setFigures(context, ink, { px: 14, weight: 600, align: 'left' });
  context.strokeStyle = ink.reed;
  context.lineWidth = 2;
  for (const [i, { name, done }] of STEPS.entries()) {
    const x = view.width - MARK.edge - (STEPS.length - i) * MARK.apart;
    const y = MARK.edge + 2 + (view.width < NARROW_PX ? WORDS_PX : 0);
    context.beginPath();
    context.arc(x, y, MARK.radius, 0, 2 * Math.PI);
    context.fillStyle = ink.reed;
    if ((done as readonly Hang[]).includes(hang)) context.fill();
    context.stroke();
    context.fillStyle = ink.ink;
    context.fillText(name, x + 2 * MARK.radius, y + 1);
  }
  if (hang !== 'hung') return;
  const last = pose.x.length - 1;
  context.beginPath();
  context.arc(pixelX(view, pose.x[last]), pixelY(view, pose.z[last]) - 6, RING, 0, 2 * Math.PI);
  context.stroke();
}
