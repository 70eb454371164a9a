/** Practice water: rod, line, bait and bottom as they are, moved by hand. It knows no lesson. */
export { default as PracticeWater } from './later/PracticeWater.svelte';
export { default as Replay } from './later/Replay.svelte';
export { default as WaterComing } from './later/Waiting.svelte';
export { default as RunFilm } from './later/RunFilm.svelte';
export { default as Compare } from './later/Compare.svelte';
export { default as GearPanel } from './GearPanel.svelte';
export { comparedText, type Side } from './comparison';
export { faultText } from './fault';
export { trySummaryOf } from './events';
export { stretched } from './pace';
export type { Try } from './live-try';
export type { Plane } from './rod-angles';
export { FIRST_GEAR, setupOf } from './gear';
export { CameraFault, closeCamera, openCamera } from './camera/open-camera';
export { taskStepsOf } from './task-steps';
export { RodCamera } from './camera/rod-camera.svelte';
export { painted } from './painted';
export { waterCode } from './later/code.svelte';
