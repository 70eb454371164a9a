import { resolve } from 'node:path';
import { loadHandler, serve } from '../../server/serve.mjs';
import { ownFolder } from './own-folder';

/** Serves the build that the caller made (npm run test:e2e makes one), on a free port. */
export default async function serveBuild(): Promise<() => Promise<void>> {
  const folder = process.env.FELTFOOT_BUILD;
  if (!folder) throw new Error('FELTFOOT_BUILD names no build. Run this with: npm run test:e2e');
  // Guides and clinics of tests are nobody's data.
  process.env.FELTFOOT_DATA ??= ownFolder('e2e');
  const handler = await loadHandler(resolve(folder));
  const { port, stop } = await serve({ handler, port: 0, host: '127.0.0.1' });
  // Workers take over the environment as it is now and read it in playwright.config.ts.
  process.env.FELTFOOT_E2E_URL = `http://localhost:${port}`;
  return stop;
}
