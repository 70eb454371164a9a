/** From a clip to lengths, heights and speeds, each with its error. See docs/film.md. */
export type { FrameSize, LumaFrame, Pixel } from './frame';
export { frameTimes, type FrameTimes } from './frame-times';
export type { PlanePoint } from './homography';
export { motionOf, type AnglerSide, type FilmedMove, type MotionRow, type RowFlag } from './motion';
export { outcomeOf, type FilmedOutcome } from './outcome';
export { scaleFaultOf, scaleOf, type Scale, type ScaleFault, type ScaleMarks } from './scale';
export { HAND_SD_PX, SpotTracker, type Sighting, type SightingState } from './tracker';
export { lensShare, wayErrors, type FilmedHow, type WaySd } from './way-error';
