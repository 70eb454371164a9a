import { defineConfig } from 'vite';

// Beside the app's own files, whole, and without Kit.
export default defineConfig({
  publicDir: false,
  ssr: { noExternal: true },
  build: { ssr: 'src/lib/server/compute-thread.ts', emptyOutDir: false }
});
