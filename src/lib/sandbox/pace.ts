import { ROD_RATE_HZ, type Move, type RodInput, type SequenceStep } from '$lib/model';

type SingleMove = Exclude<Move, { kind: 'sequence' }>;

/** The same move in `factor` times its time, rests included; 2 is half as fast. */
export function stretched(move: Move, factor: number): Move {
  if (move.kind !== 'sequence') return single(move, factor);
  return { ...move, moves: move.moves.map((step) => stepOf(step, factor)) };
}

function stepOf(step: SequenceStep, factor: number): SequenceStep {
  return 'duration_s' in step
    ? { ...step, duration_s: step.duration_s * factor }
    : { ...step, t_s: step.t_s.map((t_s) => t_s * factor) };
}

function single(move: SingleMove, factor: number): SingleMove {
  if (move.kind === 'rod_input') return resampled(move, factor);
  return stepOf(move, factor) as SingleMove;
}

/** A recorded hand, read between its samples so that there is one a tick again. */
function resampled(input: RodInput, factor: number): RodInput {
  const anew = (values: number[]) => {
    const last = values.length - 1;
    return Array.from({ length: Math.max(2, Math.round(last * factor) + 1) }, (_, i) => {
      const at = Math.min(i / factor, last);
      const before = Math.floor(at);
      const after = Math.min(before + 1, last);
      return values[before] + (at - before) * (values[after] - values[before]);
    });
  };
  const angles = (value: number | number[]) => (Array.isArray(value) ? anew(value) : value);
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    elevation_deg: angles(input.elevation_deg),
    azimuth_deg: angles(input.azimuth_deg),
    ...(input.line_in_m ? { line_in_m: anew(input.line_in_m) } : {})
  };
}
