/** From a clip to lengths, heights and speeds, each with its error. See docs/film.md. */
export type { FrameSize, LumaFrame, Pixel } from './frame';
export { frameTimes } from './frame-times';
export type { PlanePoint } from './homography';
export { motionOf, type AnglerSide, type FilmedMove, type MotionRow } from './motion';
export { outcomeOf, type FilmedOutcome } from './outcome';
export { scaleFaultOf, scaleOf, type ScaleFault, type ScaleMarks } from './scale';
export { HAND_SD_PX, SpotTracker, type Sighting } from './tracker';
export { lensShare, wayErrors } from './way-error';
export { filtered, filterWidth_s, type RodRecording } from './rod/recording';
export { liftAngles, pairAngleFrom, type TapePair } from './rod/lift-angles';
export { OneEuro } from './rod/one-euro';
export { StillTaker } from './rod/still-taker';
export { sweepAngles, type RodView, type SweepPose, type ViewFault } from './rod/sweep-angles';
export { findTapes, learnTape, type ColorFrame, type Tape, type TapeFault } from './rod/tape';
