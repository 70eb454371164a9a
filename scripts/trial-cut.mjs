import { dirname, join } from 'node:path';
import { build } from 'vite';
import { root } from './run.mjs';

/** @typedef {import('rolldown').PluginContext} Context */
/** @typedef {(id: string) => boolean} Asks */

const MARK = '\0trial:';
const realOf = (/** @type {string} */ id) => id.slice(MARK.length);

/**
 * The one of these modules that is meant: asking every resolver takes a second for each hundred.
 * @param {string} source @param {string} from @param {string[]} imports
 */
function meantBy(source, from, imports) {
  const path = source.startsWith('$lib/')
    ? join(root, 'src', source.slice(1))
    : join(dirname(from.split('?')[0]), source);
  const ends = ['', '.ts', '.js', '/index.ts', '/index.js'].map((end) => path + end);
  return imports.find((id) => id === source || ends.includes(id));
}

/**
 * What is resolved and compiled already, once more.
 * @param {Context} context @param {Asks} hasSideEffects @returns {import('vite').Plugin}
 */
function fromMemory(context, hasSideEffects) {
  /** @type {Map<string, ReturnType<Context['resolve']>>} */
  const packages = new Map();
  function asked(/** @type {string} */ source, /** @type {string} */ from) {
    if (source.startsWith('.')) return context.resolve(source, from);
    const known = packages.get(source) ?? context.resolve(source, from);
    packages.set(source, known);
    return known;
  }
  const marked = (/** @type {string} */ id) => ({
    id: MARK + id,
    moduleSideEffects: hasSideEffects(id)
  });
  return {
    name: 'from-memory',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!importer) return marked(realOf(source));
      const from = realOf(importer);
      const info = context.getModuleInfo(from);
      const imports = [...(info?.importedIds ?? []), ...(info?.dynamicallyImportedIds ?? [])];
      const id = meantBy(source, from, imports) ?? (await asked(source, from))?.id;
      return id && context.getModuleInfo(id) ? marked(id) : { id: source, external: true };
    },
    load(id) {
      const code = context.getModuleInfo(realOf(id))?.code ?? '';
      // The address of a worker's file: only the real build has that.
      return code.replace(/import\.meta\.ROLLDOWN_FILE_URL_[\w$]+/g, "''");
    }
  };
}

/**
 * The chunks that the bundler makes by itself of what a build has read, without writing them.
 * @param {Context} context of a plugin, once all is read
 * @param {Asks} hasSideEffects whether a module does anything by being imported
 * @returns {Promise<{ file: string, entry: string | null, ids: string[], imports: string[], code: string }[]>}
 *   entry: the module that a chunk is there for
 */
export async function trialCut(context, hasSideEffects) {
  const entries = [...context.getModuleIds()].filter((id) => context.getModuleInfo(id)?.isEntry);
  const input = entries.sort().map((id, i) => [`entry-${i}`, MARK + id]);
  const { output } = /** @type {import('rolldown').RolldownOutput} */ (
    await build({
      configFile: false,
      logLevel: 'silent',
      plugins: [fromMemory(context, hasSideEffects)],
      build: {
        write: false,
        modulePreload: false,
        rolldownOptions: { input: Object.fromEntries(input), preserveEntrySignatures: 'strict' }
      }
    })
  );
  return output.flatMap((one) => {
    if (one.type !== 'chunk') return [];
    const ids = Object.keys(one.modules).filter((id) => id.startsWith(MARK));
    return {
      file: one.fileName,
      entry: one.isEntry || one.isDynamicEntry ? realOf(one.facadeModuleId ?? MARK) : null,
      ids: ids.map(realOf),
      imports: one.imports,
      code: one.code
    };
  });
}
