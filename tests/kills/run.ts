/** `npm run kills -- [COUNT] [SEED]`: kills commands that write at any moment; exit code 1 if anything was lost or half. */
import { kill } from './kills.ts';

const [count = '300', seed = '1'] = process.argv.slice(2);
const { kills, inTime, done, wrong } = await kill(Number(count), Number(seed));
for (const one of wrong) process.stdout.write(`${one}\n`);
process.stdout.write(
  `${kills} commands, ${inTime} killed before their end, ${done} of them with the new file; ${wrong.length} wrong\n`,
);
process.exitCode = wrong.length === 0 ? 0 : 1;
