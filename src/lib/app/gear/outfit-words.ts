import { droppedAreaOf } from '$lib/fit';
import { INCH_M } from '$lib/model';
import { MATERIAL_NAMES } from '$lib/sandbox/gear';
import {
  formatDiameter,
  formatLength,
  formatWeight,
  withUnit,
  type UnknownName,
  type Units
} from '$lib/scoring';
import type { Outfit } from '$lib/wire';

/** "1/2 oz football, 7 ft 2 in rod, 12 lb fluorocarbon" */
export function outfitText({ jig, rod, line }: Outfit, units: Units): string {
  const parts = [
    [formatWeight(jig.mass_kg, units), jig.head].filter(Boolean).join(' '),
    jig.trailer && `${jig.trailer} trailer`,
    `${formatLength(rod.length_m, units)} rod`,
    lineText(line, units)
  ];
  return parts.filter(Boolean).join(', ');
}

function lineText(line: Outfit['line'], units: Units): string {
  const { material, strength_lb, diameter_m, leader } = line;
  const size = strength_lb ? withUnit(strength_lb, 'lb') : formatDiameter(diameter_m, units);
  const text = `${size} ${MATERIAL_NAMES[material]}`;
  return leader ? `${text} with a ${formatLength(leader.length_m, units)} leader` : text;
}

/** 0.9 in², 5.8 cm²: frontal area times drag coefficient. */
function areaText(m2: number, units: Units): string {
  return units === 'metric'
    ? withUnit((m2 * 1e4).toFixed(1), 'cm²')
    : withUnit((m2 / INCH_M ** 2).toFixed(2), 'in²');
}

/** What the drop says of the drag area; empty without one. */
export function dropText(outfit: Pick<Outfit, 'jig' | 'line'>, units: Units): string {
  const dropped = droppedAreaOf(outfit);
  if (!dropped) return '';
  const [least, most] = dropped.interval90;
  const area = (m2: number) => areaText(m2, units);
  return `Your drop says drag area ${area(dropped.estimate)}, ${area(least)} to ${area(most)} nine times in ten.`;
}

export const UNKNOWN_TITLES: Record<UnknownName, string> = {
  reach_m: 'Rod, hand to tip',
  elevation_deg: 'You hold it higher by',
  slack_m: 'Slack at the start',
  drag_area_m2: 'Drag area of the jig',
  lift_to_drag: 'Riding up on its skirt'
};

/** What each is, in plain words. */
export const UNKNOWN_SAYS: Record<UnknownName, string> = {
  reach_m: 'A rod that bends acts shorter than your tape says.',
  elevation_deg: 'Than you said. Minus: lower.',
  slack_m: 'Line that comes tight before the jig moves.',
  drag_area_m2: 'How much water the jig and trailer push. Bigger falls slower.',
  lift_to_drag: 'How it rises when pulled. 0: it doesn’t. 0.30: a lot.'
};

/** A fitted value in the learner's unit. */
export function unknownText(name: UnknownName, value: number, units: Units): string {
  switch (name) {
    case 'reach_m':
    case 'slack_m':
      return formatLength(value, units);
    case 'elevation_deg':
      return `${Math.round(value) < 0 ? '−' : ''}${Math.abs(Math.round(value))}°`;
    case 'drag_area_m2':
      return areaText(value, units);
    case 'lift_to_drag':
      return value.toFixed(2);
  }
}
