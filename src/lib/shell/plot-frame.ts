/** A plot's picture and the axes within it, px. */
export interface PlotEdges {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** A number beside an axis, px along it. */
export interface PlotTick {
  at: number;
  text: string;
}
