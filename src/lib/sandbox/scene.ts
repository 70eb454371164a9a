import type { Trace } from '$lib/model';
import { closeUp, type CloseUpExtent } from './close-up';
import { paintBottom, paintBottomBack } from './draw/bottom';
import { deckGaze, deckView, paintDeck, paintDeckBack } from './draw/from-deck';
import { liftView, paintLift, paintLiftBack } from './draw/lift';
import { overviewView, paintOverview, paintOverviewBack } from './draw/overview';
import { paintSweep, paintSweepBack, sweepView } from './draw/sweep';
import type { Ink } from './palette';
import { Picture } from './picture';
import { Scenery, type SceneryNow } from './scenery/scenery';
import { closeUpExtentOf, widen, type Moment, type Backdrop } from './stage';
import type { View } from './view';

const rods = {
  lift: { view: liftView, back: paintLiftBack, front: paintLift },
  sweep: { view: sweepView, back: paintSweepBack, front: paintSweep },
  deck: { view: deckView, back: paintDeckBack, front: paintDeck }
} as const;

function rodPicture({ isFromDeck, plane }: Backdrop) {
  return rods[isFromDeck ? 'deck' : plane];
}

/** The three linked pictures: they show one moment of one stage. */
export class Scene {
  readonly whole = new Picture();
  readonly rod = new Picture();
  readonly bottom = new Picture();
  private ink: Ink | null = null;
  private stage: Backdrop | null = null;
  private moment: Moment | null = null;
  private views: { whole: View; rod: View; bottom: View } | null = null;
  private reach: CloseUpExtent | null = null;
  /** Which way the deck's picture looks: a rod swept over to the other side takes it along. */
  private gaze = 1;
  private scenery: Scenery | null = null;
  private motion: MediaQueryList | null = null;
  private reached: { trace: Trace | null; ticks: number } = { trace: null, ticks: 0 };

  setInk(ink: Ink): void {
    this.ink = ink;
    this.motion ??= matchMedia('(prefers-reduced-motion: reduce)');
    this.layOut();
  }

  setStage(stage: Backdrop): void {
    this.reach = closeUpExtentOf(stage);
    this.stage = stage;
    this.moment = null;
    this.reached = { trace: null, ticks: 0 };
    this.layOut();
  }

  /** The colours that it is drawn in, once it is drawn. */
  get colours(): Ink | null {
    return this.ink;
  }

  /** Lays the views out and paints everything: after a new size, stage or light. */
  layOut = (): void => {
    const { ink, stage, whole, rod, bottom } = this;
    if (!ink || !stage || !this.reach || rod.width === 0) return;
    const kind = rodPicture(stage);
    const views = {
      whole: overviewView(stage, whole.width, whole.height),
      rod: kind.view(stage, rod.width, rod.height),
      bottom: closeUp(this.reach, stage.bait, bottom.width, bottom.height)
    };
    this.views = views;
    whole.paintBack((context) => paintOverviewBack(context, views.whole, stage, ink));
    rod.paintBack((context) => kind.back(context, views.rod, stage, ink));
    this.gaze = 1;
    bottom.paintBack((context) => paintBottomBack(context, views.bottom, stage, ink));
    if (this.moment) this.draw(this.moment);
  };

  draw(moment: Moment): void {
    this.moment = moment;
    if (!moment.isHidden) this.keepInView(moment.trace);
    const { ink, stage, views } = this;
    if (!ink || !stage || !views) return;
    this.whole.paintFront((context) =>
      paintOverview(context, views.whole, stage, moment, ink, views.bottom)
    );
    if (stage.isFromDeck) this.lookFromDeck(stage, moment, views.rod, ink);
    this.rod.paintFront((context) =>
      rodPicture(stage).front(context, views.rod, stage, moment, ink)
    );
    const scenery = moment.isHidden ? null : this.sceneryOf(stage, moment);
    this.bottom.paintFront((context) =>
      paintBottom(context, views.bottom, stage, moment, scenery, ink)
    );
  }

  private lookFromDeck(stage: Backdrop, { pose }: Moment, view: View, ink: Ink): void {
    const gaze = deckGaze(stage, pose);
    if (gaze === this.gaze) return;
    this.gaze = gaze;
    this.rod.paintBack((context) => paintDeckBack(context, view, stage, ink, pose));
  }

  private sceneryOf(stage: Backdrop, { trace, pose }: Moment): SceneryNow {
    if (this.scenery?.trace !== trace) {
      this.scenery = new Scenery(stage, trace, this.motion?.matches ?? true);
    }
    return this.scenery.at(pose.t_s);
  }

  private keepInView(trace: Trace): void {
    const { stage, reached, bottom } = this;
    if (!stage) return;
    if (reached.trace !== trace) {
      this.reach = closeUpExtentOf(stage);
      reached.trace = trace;
      reached.ticks = 0;
    }
    const ticks = trace.t_s.length;
    if (ticks === reached.ticks || !this.reach) return;
    widen(this.reach, stage, trace, reached.ticks, ticks);
    reached.ticks = ticks;
    if (!this.views || !this.ink) return;
    const view = closeUp(this.reach, stage.bait, bottom.width, bottom.height);
    const { scale, y0 } = this.views.bottom;
    if (view.scale === scale && view.y0 === y0) return;
    this.views.bottom = view;
    const { ink } = this;
    bottom.paintBack((context) => paintBottomBack(context, view, stage, ink));
  }
}
