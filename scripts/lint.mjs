// npm run lint [-- path …]: all of it, or those files and folders.
import { fenced, linted } from './linters.mjs';

const [, , ...paths] = process.argv;
const named = paths.length > 0 ? paths : undefined;
process.exitCode = (await linted(named)) || (await fenced(named));
