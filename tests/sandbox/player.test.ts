import { expect, test } from 'vitest';
import { Player } from '../../src/lib/sandbox/player.svelte';

test('a replay stops at its end, and begins anew when it is played again', () => {
  const player = new Player(2.5);
  player.play();
  player.advance(3);
  expect([player.time_s, player.isPlaying]).toEqual([2.5, false]);
  player.play();
  player.advance(0.4);
  expect(player.time_s).toBeCloseTo(0.4, 12);
});

test('looped, it begins anew at its end until it is told to stop there', () => {
  const player = new Player(2.5);
  player.loop(true);
  player.advance(2.4);
  player.advance(0.2);
  expect([player.time_s, player.isPlaying]).toEqual([0, true]);
  player.loop(false);
  player.advance(3);
  expect([player.time_s, player.isPlaying]).toEqual([2.5, false]);
});

test('a quarter of the speed takes four times as long', () => {
  const player = new Player(10);
  player.rate = 0.25;
  player.play();
  player.advance(2);
  expect(player.time_s).toBeCloseTo(0.5, 12);
});
