import { FrameLoop } from './frame-loop';
import type { Scene } from './scene';
import type { Showing } from './showing.svelte';

/** Draws a showing into its scene, frame by frame while it plays. */
export function playLoop(scene: Scene, showing: () => Showing): FrameLoop {
  return new FrameLoop((_now, elapsed_ms) => {
    const { player } = showing();
    player.advance(elapsed_ms / 1000);
    showing().draw(scene);
    return player.isPlaying;
  });
}
