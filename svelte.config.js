import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { nodeAdapter } from './scripts/node-adapter.mjs';
import { staticAdapter } from './scripts/static-adapter.mjs';

const { FELTFOOT_STATIC, FELTFOOT_BASE = '', FELTFOOT_BUILD_OUT = 'build' } = process.env;

/** @type {import('@sveltejs/kit').Config} */
export default {
  preprocess: vitePreprocess(),
  kit: {
    adapter: FELTFOOT_STATIC ? staticAdapter(FELTFOOT_STATIC) : nodeAdapter(FELTFOOT_BUILD_OUT),
    // The service worker answers for a page with a slash too many, where './' means something else.
    // Pages have up to nine small style sheets: each by itself would cost a round trip before the page shows.
    inlineStyleThreshold: 12_000,
    paths: { relative: false, base: FELTFOOT_BASE },
    // 'auto' writes nonces into rendered pages and hashes into prerendered ones, so both are covered.
    csp: {
      mode: 'auto',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
        // Svelte's style: directives set element styles, which only 'unsafe-inline' lets through.
        'style-src': ['self', 'unsafe-inline'],
        'img-src': ['self', 'data:', 'blob:'],
        // A clip from this device, played where it cannot be decoded.
        'media-src': ['self', 'blob:'],
        'font-src': ['self'],
        'connect-src': ['self'],
        'worker-src': ['self', 'blob:'],
        'manifest-src': ['self'],
        'object-src': ['none'],
        'base-uri': ['self'],
        'form-action': ['self'],
        'frame-ancestors': ['none']
      }
    }
  }
};
