import { runInstalled } from './run.mjs';
import { ensureSynced } from './sync.mjs';

/** @param {string[]} [paths] @returns {Promise<number>} the exit code of ESLint, its fences included */
export async function linted(paths = ['.']) {
  const { code } = await runInstalled('eslint/bin/eslint.js', [...paths, '--max-warnings=0']);
  return code;
}

/** @param {string[]} [paths] @returns {Promise<number>} the exit code of dependency-cruiser */
export async function fenced(paths = ['src', 'scripts', 'server']) {
  await ensureSynced();
  const program = 'dependency-cruiser/bin/dependency-cruise.mjs';
  const { code } = await runInstalled(program, ['--config', '.dependency-cruiser.cjs', ...paths]);
  return code;
}

/** @param {string[]} how what Prettier does, and with which paths @returns {Promise<number>} its exit code */
export async function formatted(...how) {
  const { code } = await runInstalled('prettier/bin/prettier.cjs', how);
  return code;
}
