import { onMount } from 'svelte';
import type { FeltChannel } from './felt-channel.svelte';
import { FrameLoop } from './frame-loop';
import type { Scene } from './scene';
import type { Showing } from './showing.svelte';
import type { Backdrop } from './stage';

/** Draws a showing into its scene, frame by frame while it plays, for as long as its component lives. */
export function drawPlayed(
  scene: Scene,
  stage: () => Backdrop,
  showing: () => Showing,
  felt?: FeltChannel
): void {
  const loop = new FrameLoop((now_ms, elapsed_ms) => {
    const { player } = showing();
    player.advance(elapsed_ms / 1000);
    showing().draw(scene);
    felt?.followAgain(showing(), now_ms);
    return player.isPlaying;
  });
  $effect(() => {
    scene.setStage(stage());
    loop.wake();
  });
  $effect(() => {
    // Both are read: played from its very beginning, the time has not changed yet.
    const { time_s, isPlaying } = showing().player;
    if (isPlaying || time_s >= 0) loop.wake();
  });
  onMount(() => () => loop.stop());
}
