import { parseArgs } from 'node:util';
import { seededRandom } from '../src/lib/model';
import { crashRounds } from './crash-rounds';

const { values } = parseArgs({
  options: { rounds: { type: 'string', default: '25' }, seed: { type: 'string', default: '1' } }
});
const rounds = Number(values.rounds);
if (!Number.isInteger(rounds) || rounds < 1) throw new Error(`--rounds: ${values.rounds}`);

const report = await crashRounds(rounds, seededRandom(Number(values.seed)), (so_far) =>
  console.error(JSON.stringify(so_far))
);
console.log(JSON.stringify(report));
if (report.lost + report.doubled > 0) process.exitCode = 1;
