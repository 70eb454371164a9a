// npm run format [-- path …]: all of it, or those files and folders. With --check, only looks.
import { formatted } from './linters.mjs';

const [, , ...given] = process.argv;
const paths = given.filter((path) => path !== '--check');
const does = given.includes('--check') ? '--check' : '--write';
process.exitCode = await formatted(does, ...(paths.length > 0 ? paths : ['.']));
