import type { PooledName } from '$lib/fit';
import { INCH_M } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { TableJig } from '$lib/wire';
import { scaleLinear } from 'd3-scale';
import { markOfZ, measurerName } from './table-words';

const WIDTH = 344;
const LEFT = 92;
const ROW = 28;
const FOOT = 26;
/** So many letters of a name have room. */
const MOST_LETTERS = 12;

const UNITS: Record<PooledName, Record<Units, { size: number; unit: string }>> = {
  drag_area_m2: {
    imperial: { size: INCH_M ** 2, unit: 'in²' },
    metric: { size: 1e-4, unit: 'cm²' }
  },
  lift_to_drag: { imperial: { size: 1, unit: '' }, metric: { size: 1, unit: '' } }
};

/** One number of a jig as each has it, and as all have it, in the units of its drawing. */
export function jigSpans({ measured, pooled }: TableJig, name: PooledName, units: Units) {
  const { size, unit } = UNITS[name][units];
  const all = pooled[name];
  const lines = [
    ...measured.map((one) => ({ text: measurerName(one), value: one.numbers[name], isAll: false })),
    ...(all ? [{ text: 'Together', value: { ...all, z: null }, isAll: true }] : [])
  ];
  const ends = lines.flatMap(({ value }) => value?.interval90 ?? []);
  const most = Math.max(1e-9, ...ends) / size;
  const x = scaleLinear([0, most], [LEFT, WIDTH - 12]).nice(4);
  const at = (value: number) => x(Math.max(0, value / size));
  return {
    ...{ unit, width: WIDTH, left: LEFT, height: ROW * lines.length + FOOT },
    ticks: x.ticks(4).map((tick) => ({ x: x(tick), text: `${tick}` })),
    rows: lines.map(({ text, value, isAll }, i) => ({
      y: ROW * (i + 0.5),
      text: text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS - 1)}…` : text,
      span: value && ([at(value.interval90[0]), at(value.interval90[1])] as const),
      at: value ? at(value.estimate) : 0,
      mark: markOfZ(value?.z),
      isAll
    }))
  };
}
