import { TICK_S, tipPathOf, type RecordedRun, type RodAngles, type TipPath } from '$lib/model';
import { newPose, type Pose } from './pose';
import { restsAt } from './series';

/** A recorded run as it is shown, at any moment. */
export interface Film extends RecordedRun, Pick<TipPath, 'anglesAt' | 'lineIn_m'> {
  /** When everything has come to rest, s: what comes after is not shown. */
  readonly ends_s: number;
}

/** The film of a run, which it does not run again. */
export function filmOf(run: RecordedRun): Film {
  const { anglesAt, lineIn_m } = tipPathOf(run.setup, run.move);
  return { ...run, ends_s: restsAt(run.result.trace), anglesAt, lineIn_m };
}

/** Where the rod pointed before it was moved. */
export function rodAtStart(film: Film): RodAngles {
  const angles = { elevation_deg: 0, azimuth_deg: 0 };
  film.anglesAt(0, angles);
  return angles;
}

/** A pose with as many nodes as the film has. */
export function poseFor(film: Film): Pose {
  return newPose(film.line.nodes);
}

/** The film's picture at `t_s`, between ticks too, written to `out`. */
export function showAt(film: Film, t_s: number, out: Pose): void {
  const { x, z, nodes } = film.line;
  const { trace } = film.result;
  const last = trace.t_s.length - 1;
  const at = Math.min(Math.max(t_s / TICK_S, 0), last);
  const tick = Math.floor(at);
  const next = Math.min(tick + 1, last);
  const share = at - tick;
  for (let i = 0; i < nodes; i++) {
    const a = tick * nodes + i;
    const b = next * nodes + i;
    out.x[i] = x[a] + share * (x[b] - x[a]);
    out.z[i] = z[a] + share * (z[b] - z[a]);
  }
  out.t_s = at * TICK_S;
  film.anglesAt(out.t_s, out);
  out.tipTension_N = trace.tip_tension_N[tick];
}
