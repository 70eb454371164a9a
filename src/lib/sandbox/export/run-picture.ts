import { TICK_S, type RecordedRun, type Trace } from '$lib/model';
import type { DrawnGoal, Units } from '$lib/scoring';
import { closeUp } from '../close-up';
import { paintBottom, paintBottomBack } from '../draw/bottom';
import { uprightsTop } from '../draw/goals';
import { overviewView, paintOverview, paintOverviewBack } from '../draw/overview';
import { setFigures } from '../draw/type';
import { filmOf, poseFor, rodAtStart, showAt, type Film } from '../film';
import type { Ink } from '../palette';
import { planeOf } from '../rod-angles';
import { Scenery } from '../scenery/scenery';
import { closeUpExtentOf, stageOf, widen, type Backdrop, type Moment } from '../stage';
import { pixelX, pixelY, type View } from '../view';

/** A run at its end, as practice water shows it: for a picture that goes elsewhere. */
export interface PicturedRun {
  readonly run: RecordedRun;
  readonly target: DrawnGoal | null;
  /** What was meant: drawn as a ghost. */
  readonly meant: Trace | null;
  readonly isPassed: boolean;
  readonly units: Units;
}

/** A place on a larger picture. */
export interface PicturePlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Nearer to the bait than this, what was meant is not named: its name would lie on the bait, px. */
const CLEAR_PX = 34;

/** From the middle of its name to what is under it, px. */
const OVER_PX = 10;

/** Boat, rod and line down to the bait in one place; bait, goal and ruler, larger, in another. */
export function paintRun(
  context: CanvasRenderingContext2D,
  shown: PicturedRun,
  places: { whole: PicturePlace; bottom: PicturePlace },
  ink: Ink
): void {
  const film = filmOf(shown.run);
  const stage = stageFor(shown, film);
  const moment = endOf(film, shown.isPassed);
  const { whole, bottom } = places;
  const reach = closeUpExtentOf(stage);
  widen(reach, stage, moment.trace, 0, moment.ticks);
  const near = closeUp(reach, stage.bait, bottom.width, bottom.height);
  const far = overviewView(stage, whole.width, whole.height);
  const scenery = new Scenery(stage, moment.trace, true).at(moment.pose.t_s);
  at(context, whole, () => {
    paintOverviewBack(context, far, stage, ink);
    paintOverview(context, far, stage, moment, ink, near);
  });
  at(context, bottom, () => {
    paintBottomBack(context, near, stage, ink);
    paintBottom(context, near, stage, moment, scenery, ink);
    if (shown.meant) nameMeant(context, near, stage, shown.meant, moment, ink);
  });
}

function stageFor({ run, target, meant, units }: PicturedRun, film: Film): Backdrop {
  const ghosts = meant ? [meant] : [];
  const start = rodAtStart(film);
  return stageOf({ setup: run.setup, plane: planeOf(run.move), start, units, target, ghosts });
}

function endOf(film: Film, isPassed: boolean): Moment {
  const pose = poseFor(film);
  showAt(film, film.ends_s, pose);
  const { trace, events } = film.result;
  const ticks = Math.min(Math.round(film.ends_s / TICK_S), trace.t_s.length - 1) + 1;
  return { pose, trace, ticks, events, isRevealed: true, isPassed, isHidden: false };
}

/** Names the ghost, where its name does not lie on the bait. */
function nameMeant(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  { bait_x_m, bait_z_m }: Trace,
  { pose }: Moment,
  ink: Ink
): void {
  const [x, y] = [pixelX(view, bait_x_m.at(-1) as number), pixelY(view, bait_z_m.at(-1) as number)];
  const end = pose.x.length - 1;
  if (Math.hypot(x - pixelX(view, pose.x[end]), y - pixelY(view, pose.z[end])) < CLEAR_PX) return;
  setFigures(context, ink, { px: 15, weight: 600, align: 'center' });
  context.strokeStyle = ink.deep;
  context.lineWidth = 5;
  const overBait = y - 2 * stage.baitRadius_m * view.scale - 14;
  // Over the uprights of the goal, which would run through it.
  const above = stage.target?.travel_m
    ? Math.min(overBait, uprightsTop(view, stage) - OVER_PX)
    : overBait;
  context.strokeText('meant', x, above);
  context.fillText('meant', x, above);
}

function at(context: CanvasRenderingContext2D, place: PicturePlace, paint: () => void): void {
  context.save();
  context.beginPath();
  context.rect(place.left, place.top, place.width, place.height);
  context.clip();
  context.translate(place.left, place.top);
  context.lineCap = 'round';
  context.lineJoin = 'round';
  paint();
  context.restore();
}
