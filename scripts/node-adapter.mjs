import adapter from '@sveltejs/adapter-node';
import { compressBelow } from './compressed.mjs';

/**
 * Kit's own, but for what compresses: that opens every file at once, and ends where no more than a
 * thousand may be open, as some builders of containers have it.
 * @param {string} out
 * @returns {import('@sveltejs/kit').Adapter}
 */
export function nodeAdapter(out) {
  const kits = adapter({ out, precompress: true });
  return { ...kits, adapt: (builder) => kits.adapt({ ...builder, compress: compressBelow }) };
}
