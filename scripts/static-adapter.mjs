import { rmSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes the pages and what they need into a folder that any web space serves. What needs a program of
 * ours behind it is not in there; whoever asks for it gets the page for wrong addresses.
 * @param {string} out
 * @returns {import('@sveltejs/kit').Adapter}
 */
export function staticAdapter(out) {
  return {
    name: 'feltfoot-static',
    async adapt(builder) {
      rmSync(out, { recursive: true, force: true });
      builder.writeClient(out);
      builder.writePrerendered(out);
      await builder.generateFallback(join(out, '404.html'));
    }
  };
}
