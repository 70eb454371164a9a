import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';
import type { Metrics } from './metric';
import type * as Figures from './model/figures';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const BUILT = `${ROOT}.cache/bench/`;

/**
 * Figures of the model as it ships: built into one file. Run file by file, as the other parts of the bench
 * are, the same code makes a quarter less, which no user meets.
 */
export async function modelMetrics(): Promise<Metrics> {
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'warn',
    build: {
      ssr: true,
      minify: false,
      outDir: BUILT,
      rollupOptions: {
        input: { figures: 'bench/model/figures.ts', worker: 'bench/model/worker.ts' }
      }
    }
  });
  const built = pathToFileURL(`${BUILT}figures.js`).href;
  const { modelFigures } = (await import(built)) as typeof Figures;
  return modelFigures();
}
