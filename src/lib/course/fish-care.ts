/** How a fish goes back alive: common practice, no source. The rules of the place come first. */
export const fishCare: readonly string[] = [
  'Wet your hands. Hold the jaw and the belly.',
  'Unhook it in the water. Deep hook: cut the line close.',
  'Out of the water for one held breath, no longer.',
  'Up from deep and bloated: sink it on a descending device. No device aboard? Don’t fish that deep.',
  'Let it swim off by itself.'
];
