import { FOOT_M, INCH_M } from '$lib/model';
import { withUnit, type Units } from '$lib/scoring';

export interface RulerTick {
  /** m from the ruler's zero. */
  readonly at_m: number;
  /** 0 fine, 1 half-way, 2 with a label. */
  readonly rank: 0 | 1 | 2;
  readonly label: string;
  /** Whether the piece that begins here, up to the next tick of rank 1 or 2, is a solid one. */
  readonly isSolid: boolean;
}

interface Division {
  readonly fine_m: number;
  /** Fine divisions to a half-way tick and to a labelled one. */
  readonly half: number;
  readonly whole: number;
}

const DIVISIONS: Record<Units, readonly Division[]> = {
  imperial: [
    { fine_m: INCH_M, half: 3, whole: 6 },
    { fine_m: INCH_M, half: 6, whole: 12 },
    { fine_m: 3 * INCH_M, half: 2, whole: 4 },
    { fine_m: 6 * INCH_M, half: 2, whole: 4 },
    { fine_m: FOOT_M, half: 1, whole: 5 },
    { fine_m: FOOT_M, half: 5, whole: 10 },
    { fine_m: 5 * FOOT_M, half: 2, whole: 4 },
    { fine_m: 10 * FOOT_M, half: 1, whole: 5 }
  ],
  metric: [
    { fine_m: 0.01, half: 5, whole: 10 },
    { fine_m: 0.05, half: 2, whole: 4 },
    { fine_m: 0.1, half: 5, whole: 5 },
    { fine_m: 0.1, half: 5, whole: 10 },
    { fine_m: 0.5, half: 2, whole: 4 },
    { fine_m: 1, half: 5, whole: 5 },
    { fine_m: 1, half: 5, whole: 10 }
  ]
};

/** Fine ticks closer than this run together, px. */
const FINE_PX = 4.5;

/**
 * Ticks from `from_m` to `to_m` at a scale of `scale` pixels a metre, as fine as can be read, with
 * labels at least `label_px` apart.
 */
export function rulerTicks(
  from_m: number,
  to_m: number,
  scale: number,
  units: Units,
  label_px = 44
): RulerTick[] {
  const division = divisionFor(scale, units, label_px);
  const ticks: RulerTick[] = [];
  const last = Math.floor(to_m / division.fine_m + 1e-9);
  for (let i = Math.ceil(from_m / division.fine_m - 1e-9); i <= last; i++) {
    const at_m = i * division.fine_m;
    const rank = i % division.whole === 0 ? 2 : i % division.half === 0 ? 1 : 0;
    const isSolid = Math.floor(i / division.half) % 2 === 0;
    ticks.push({ at_m, rank, label: rank === 2 ? label(at_m, units) : '', isSolid });
  }
  return ticks;
}

function divisionFor(scale: number, units: Units, label_px: number): Division {
  const divisions = DIVISIONS[units];
  const readable = divisions.find(
    ({ fine_m, whole }) => fine_m * scale >= FINE_PX && whole * fine_m * scale >= label_px
  );
  return readable ?? divisions[divisions.length - 1];
}

function label(at_m: number, units: Units): string {
  if (at_m === 0) return '0';
  const sign = at_m < 0 ? '−' : '';
  if (units === 'metric') return sign + metricLabel(Math.abs(at_m));
  return sign + imperialLabel(Math.round(Math.abs(at_m) / INCH_M));
}

/** Up to two feet a folding rule counts inches; beyond, feet and halves are read faster. */
function imperialLabel(inches: number): string {
  const feet = Math.floor(inches / 12);
  if (inches % 12 === 0) return withUnit(feet, 'ft');
  return inches % 12 === 6 && feet >= 2 ? withUnit(`${feet}½`, 'ft') : withUnit(inches, 'in');
}

function metricLabel(at_m: number): string {
  const cm = Math.round(at_m * 100);
  return cm % 100 === 0 ? withUnit(cm / 100, 'm') : withUnit(cm, 'cm');
}

/** Marks of a sounding line down to `depth_m`, at least `least_px` apart. */
export function soundingMarks(
  depth_m: number,
  scale: number,
  units: Units,
  least_px = 22
): RulerTick[] {
  const unit_m = units === 'imperial' ? FOOT_M : 1;
  const steps = units === 'imperial' ? [5, 10, 20, 50] : [1, 2, 5, 10];
  const step = steps.find((s) => s * unit_m * scale >= least_px) ?? steps[steps.length - 1];
  const marks: RulerTick[] = [];
  for (let i = 1; i * step * unit_m < depth_m - 0.25 * step * unit_m; i++) {
    const isSolid = i % 2 === 1;
    marks.push({
      at_m: i * step * unit_m,
      rank: 2,
      label: withUnit(i * step, units === 'imperial' ? 'ft' : 'm'),
      isSolid
    });
  }
  return marks;
}
