import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const mark = '.served-by-';

/** Says in a build's folder that this process serves from it. @param {string} folder */
export function markServed(folder) {
  try {
    for (const { name, pid } of marksIn(folder)) if (!isRunning(pid)) rmSync(join(folder, name));
    writeFileSync(join(folder, mark + process.pid), '');
  } catch {
    // A folder that nobody may write to, nobody may delete either.
  }
}

/** @param {string} folder of a build @returns {boolean} whether a process that runs serves from it */
export function isServed(folder) {
  return marksIn(folder).some(({ pid }) => isRunning(pid));
}

/** @param {string} folder */
function marksIn(folder) {
  const names = readdirSync(folder).filter((name) => name.startsWith(mark));
  return names.map((name) => ({ name, pid: Number(name.slice(mark.length)) }));
}

/** @param {number} pid */
function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it runs, under another user.
    return error.code === 'EPERM';
  }
}
