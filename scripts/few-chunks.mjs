import { brotliCompressSync, constants } from 'node:zlib';
import { mergedChunks } from './merged-chunks.mjs';
import { trialCut } from './trial-cut.mjs';

/** @typedef {Awaited<ReturnType<typeof trialCut>>} Chunks */
/** @typedef {import('./merged-chunks.mjs').Part} Part */

/** Start, app and layout: what they need, every page does. */
const isOfAll = /client\/entry\.js$|client-optimized\/(app|nodes\/0)\.js$/;

/** By file, the entries that load it. @param {Chunks} chunks */
function loaders(chunks) {
  const importsOf = new Map(chunks.map(({ file, imports }) => [file, imports]));
  const entries = chunks.filter(({ entry }) => entry !== null);
  const by = new Map(chunks.map(({ file }) => [file, /** @type {Set<string>} */ (new Set())]));
  for (const { file, entry } of entries) {
    const all = new Set([file]);
    // A set that grows while it is gone through hands out what was added, too.
    for (const one of all) for (const next of importsOf.get(one) ?? []) all.add(next);
    const users = isOfAll.test(entry ?? '') ? entries.map((one) => one.file) : [file];
    for (const one of all) for (const user of users) by.get(one)?.add(user);
  }
  return by;
}

/** What more than one entry loads. @param {Chunks} chunks @returns {Part[]} */
function sharedParts(chunks) {
  const by = loaders(chunks);
  const shared = chunks.filter(({ entry }) => entry === null);
  const place = new Map(shared.map(({ file }, i) => [file, i]));
  const quick = { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } };
  return shared.map(({ file, ids, imports, code }) => ({
    ids,
    size: brotliCompressSync(code, quick).length,
    to: imports.flatMap((one) => place.get(one) ?? []),
    by: by.get(file) ?? new Set()
  }));
}

/**
 * What has no code left is in no chunk of the trial, and would become files of its own: it goes with
 * what every page loads, unless it imports more than that.
 * @param {import('rolldown').PluginContext} context @param {Map<string, string>} names @param {Chunks} chunks
 */
function nameEmpty(context, names, chunks) {
  const known = new Set(chunks.flatMap(({ ids }) => ids));
  const base = [...names].find(([id]) => id.endsWith('svelte/src/internal/client/runtime.js'))?.[1];
  if (!base) throw new Error('No chunk holds what runs Svelte.');
  /** @type {(id: string, seen: Set<string>) => boolean} */
  const isOfBase = (id, seen) => {
    if (known.has(id)) return names.get(id) === base;
    if (seen.has(id)) return true;
    seen.add(id);
    return (context.getModuleInfo(id)?.importedIds ?? []).every((one) => isOfBase(one, seen));
  };
  const empty = [...context.getModuleIds()].filter((id) => !known.has(id));
  for (const id of empty) if (isOfBase(id, new Set())) names.set(id, base);
}

/** @param {Record<string, { imports?: string[] }>} bundle */
function refuseCycles(bundle) {
  const done = new Set();
  const visit = (/** @type {string} */ file, /** @type {string[]} */ path) => {
    if (path.includes(file))
      throw new Error(`These import each other: ${[...path, file].join(' → ')}`);
    if (done.has(file)) return;
    for (const next of bundle[file]?.imports ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of Object.keys(bundle)) visit(file, []);
}

/**
 * The bundler cuts code wherever two pages part: what the first water is made of comes in a hundred
 * files, some of a few hundred bytes, and to ask for them takes a slow phone longer than to run them. So
 * it cuts once by itself, from what is compiled already, and then leaves in one piece what is loaded
 * together nearly always.
 * @param {(id: string) => boolean} hasSideEffects whether a module does anything by being imported
 * @returns {import('vite').Plugin}
 */
export function fewChunks(hasSideEffects) {
  /** @type {Map<string, string>} */
  const names = new Map();
  return {
    name: 'few-chunks',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    // What an entry hands on stays; strictly so the bundler would not let chunks be named.
    options: (options) => ({ ...options, preserveEntrySignatures: 'allow-extension' }),
    outputOptions(options) {
      const name = (/** @type {string} */ id) => names.get(id) ?? null;
      const groups = [{ name, debugName: 'few-chunks' }];
      return { ...options, codeSplitting: { groups, includeDependenciesRecursively: false } };
    },
    async buildEnd(error) {
      if (error) return;
      const chunks = await trialCut(this, hasSideEffects);
      mergedChunks(sharedParts(chunks)).forEach((ids, i) => {
        for (const id of ids) names.set(id, `shared-${i}`);
      });
      nameEmpty(this, names, chunks);
    },
    generateBundle: (_, bundle) => refuseCycles(/** @type {any} */ (bundle))
  };
}
