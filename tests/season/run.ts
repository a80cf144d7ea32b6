/**
 * `npm run season -- FOLDER [COUNT] [SEED]`: writes an invented season into a new folder, with its jobs, its issued revision and
 * its records, to try the questions on.
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { closeSeason, writeSeason } from './closed-season.ts';
import { season } from './season.ts';

const [folder, count = '300', seed = '1'] = process.argv.slice(2);
if (folder === undefined || existsSync(folder)) {
  process.stderr.write('Give a folder that is not there yet: npm run season -- FOLDER [COUNT] [SEED]\n');
  process.exitCode = 2;
} else {
  const { files, closed } = closeSeason(season(Number(count), Number(seed)));
  for (const { uri, text } of files) {
    mkdirSync(dirname(join(folder, uri)), { recursive: true });
    writeFileSync(join(folder, uri), text);
  }
  writeSeason(join(folder, 'records'), closed);
  const done = closed.filter(({ record }) => record !== null).length;
  process.stdout.write(`${closed.length} jobs, ${done} of them closed, in ${folder}\n`);
}
