import { defineConfig } from 'vite';

// Beside the app's own files, whole, and without Kit.
export default defineConfig({
  publicDir: false,
  ssr: { noExternal: true },
  build: { ssr: 'src/lib/server/beside-thread.ts', emptyOutDir: false }
});
