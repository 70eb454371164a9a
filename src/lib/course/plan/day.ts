import type { GroundKind } from '../../model';
import type { FishedWater } from '../retrieves/fitting';

/** What a day is planned for, as far as the rules ask. SI. */
export interface PlannedDay extends FishedWater {
  depth_m: number;
  ground: GroundKind;
  wind: 'calm' | 'breeze' | 'strong';
  light: 'bright' | 'clouds' | 'low';
  /** Anglers besides the one who plans. */
  clients: number;
}
