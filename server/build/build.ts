/** Builds what runs. `--watch` goes on building. */
import { writeFileSync } from 'node:fs';
import { context, type Metafile } from 'esbuild';
import { bundles } from './bundles.ts';
import { writeContents } from './contents.ts';
import { beside, bundled, noticesOf, packageIn } from './notices.ts';

const watching = process.argv.includes('--watch');
const metafiles: Metafile[] = [];
for (const options of bundles) {
  const build = await context(options);
  if (watching) await build.watch();
  else {
    const { metafile } = await build.rebuild();
    if (metafile !== undefined) metafiles.push(metafile);
    await build.dispose();
  }
}
writeContents();
if (!watching) {
  writeFileSync('out/metafiles.json', JSON.stringify(metafiles));
  const folders = new Set([...bundled(metafiles), ...beside('.')]);
  writeFileSync('out/THIRD-PARTY-NOTICES.txt', noticesOf([...folders].map((folder) => packageIn('.', folder))));
}
