import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';

/** An esbuild plugin that writes the licences of what a bundle carries beside it. */
export function bundledLicences(file, what = 'The command') {
  return {
    name: 'bundled-licences',
    setup(build) {
      build.initialOptions.metafile = true;
      build.onEnd(({ metafile }) => {
        if (!metafile) return;
        const folders = Object.keys(metafile.inputs).map((path) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0]);
        const text = [...new Set(folders)]
          .filter((folder) => folder && existsSync(folder))
          .sort()
          .map((folder) => {
            const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
            const licence = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
            return `${name} ${version} (${license})\n\n${licence ? readFileSync(`${folder}/${licence}`, 'utf8').trim() : ''}`;
          });
        writeFileSync(file, `${what} carries these packages.\n\n${text.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`);
      });
    },
  };
}
