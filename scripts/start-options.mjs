import { parseArgs } from 'node:util';

/**
 * What `npm start` was asked for.
 * @param {string[]} args after the command's name
 * @param {Record<string, string | undefined>} env
 * @returns {{ isHttps: boolean, port: number | null }} port: null for the first free one
 * @throws {Error} that names what is wrong, and its value
 */
export function startOptions(args, env) {
  return { isHttps: httpsOf(args), port: portOf(env.PORT) };
}

/** @param {string[]} args */
function httpsOf(args) {
  try {
    return parseArgs({ args, options: { https: { type: 'boolean' } } }).values.https ?? false;
  } catch (error) {
    const { message } = /** @type {Error} */ (error);
    throw new Error(
      `${message.split('. ')[0]}. npm start takes --https; port and address are set with PORT and HOST.`,
      { cause: error }
    );
  }
}

/** @param {string | undefined} given */
function portOf(given) {
  if (!given) return null;
  const port = Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Error(`PORT is “${given}”: a whole number from 0 to 65535 was expected.`);
  }
  return port;
}
