import { page } from 'vitest/browser';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import PlayerBar from '../../src/lib/sandbox/PlayerBar.svelte';
import { Player } from '../../src/lib/sandbox/player.svelte';

/** A phone's width, and what of it a lesson leaves beside its sounding line. */
const PHONES = [
  [360, 289],
  [390, 318]
] as const;

test.each(PHONES)(
  'on a phone %i px wide its five buttons stand in one row',
  async (width, room) => {
    await page.viewport(width, 700);
    const { container } = await render(PlayerBar, { player: new Player(3) });
    container.style.width = `${room}px`;
    const tops = [...container.querySelectorAll('button')].map(
      (button) => button.getBoundingClientRect().top
    );
    expect(tops).toHaveLength(5);
    expect(new Set(tops).size).toBe(1);
  }
);
