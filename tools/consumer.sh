#!/usr/bin/env bash
# The packed tarball in an empty project: types for every module mode, import, require, two bundlers, size limits.
# Arguments: versions of Node to run it on besides this one.
set -euo pipefail
root=$PWD bin=$PWD/node_modules/.bin dir=$(mktemp -d) n=0
trap 'rm -rf "$dir"' EXIT
npm pack --silent --pack-destination "$dir" >/dev/null
cd "$dir" && echo '{}' >package.json && npm install --silent --no-audit --no-fund ./*.tgz
for name in '' $(node -e "import('$root/floors.js').then(({ subpaths }) => console.log(...subpaths))"); do
  echo "import * as m$((++n)) from 'testpiece${name:+/}$name'; export const n$n = Object.keys(m$n);"
done >use.mts
cat "$root/tools/consumer.ts" >>use.mts
cp use.mts use.cts && cp use.mts use.ts
tsc="$bin/tsc --strict --exactOptionalPropertyTypes --skipLibCheck false --target es2022 --lib es2022"
for mode in node16 nodenext; do $tsc --module $mode use.mts use.cts; done # emits use.mjs and use.cjs
$tsc --module esnext --moduleResolution bundler --noEmit use.ts
# the name that an error prints with
echo "const { InputError } = require('testpiece'); if (InputError.name !== 'InputError') throw new Error(InputError.name);" >name.cjs
run='node name.cjs && node use.mjs && node use.cjs && node node_modules/.bin/testpiece --help >/dev/null && echo "ok on $(node -v)"'
sh -c "$run"
# an optional library is loaded from either kind of module
mkdir node_modules/@resvg
for name in vega vega-lite @resvg/resvg-js; do ln -s "$root/node_modules/$name" "node_modules/$name"; done
figure="{ data: { values: [{ a: 1 }] }, mark: 'bar', encoding: { x: { field: 'a', type: 'quantitative' } } }"
draw="drawFigure($figure).then((svg) => { if (!svg.startsWith('<svg')) throw Error(svg); return drawPng($figure); }).then((png) => { if (png[1] !== 80) throw Error(png); })"
echo "import { drawFigure, drawPng } from 'testpiece/render'; await $draw" >draw.mjs
node draw.mjs
echo "const { drawFigure, drawPng } = require('testpiece/render'); $draw" >draw.cjs
node draw.cjs
# with the peers a bundle for Node draws PNG, and bundles for browsers come about, in which PNG alone is refused
"$bin/esbuild" draw.mjs --bundle --platform=node --format=esm --external:@resvg/resvg-js --external:vega --external:vega-lite --outfile=drawn.mjs --log-level=error
node drawn.mjs
inBrowser="drawFigure($figure).then((svg) => { if (!svg.startsWith('<svg')) throw Error(svg); return drawPng($figure); }).then(() => { throw Error('drawn'); }, (e) => { if (e.code !== 'missing') throw e; })"
echo "import { drawFigure, drawPng } from 'testpiece/render'; await $inBrowser" >page.mjs
echo "const { drawFigure, drawPng } = require('testpiece/render'); module.exports = $inBrowser" >page.cjs
for file in page.mjs page.cjs; do
  "$bin/esbuild" $file --bundle --platform=browser --format=esm --outfile=$file.1.mjs --log-level=error
  node $file.1.mjs
done
node -e "import('$root/node_modules/vite/dist/node/index.js').then(({ build }) => build({ root: '$dir', configFile: false, logLevel: 'error',
  build: { outDir: '$dir/vite', target: 'es2022', rollupOptions: { input: '$dir/page.mjs', output: { entryFileNames: 'page.mjs' } } } })).catch((reason) => { console.error(reason.message); process.exit(1); })"
for node in "$@"; do npx -y -p "node@$node" sh -c "$run"; done
[ $# -eq 0 ] || exit 0
echo "import { round } from 'testpiece'; globalThis.out = round({ diameter: 10 });" >round.mjs
echo "import * as all from 'testpiece/geometry'; globalThis.out = all;" >geometry.mjs
peers='vega vega-lite @resvg/resvg-js read-excel-file/universal hyparquet apache-arrow'
echo "import { analyseTension } from 'testpiece'; globalThis.out = analyseTension;" >tension.mjs
# without the peers: a bundler that does not find them leaves them to be loaded
echo "export { readSpreadsheet } from 'testpiece/files'; export { drawFigure } from 'testpiece/render';" >peers.mjs
rm node_modules/vega node_modules/vega-lite node_modules/@resvg/resvg-js && "$bin/esbuild" peers.mjs --bundle --format=esm --log-level=error --outfile=peers.1.js
for job in round:1500 geometry:8250 tension:432000 use:1970000; do # measured plus some 1 to 3 %; the last: every subpath, all five languages
  name=${job%:*}
  "$bin/esbuild" $name.mjs --bundle --minify --log-level=warning $(printf -- '--external:%s ' $peers) --outfile=$name.1.js
  node -e "require('$root/node_modules/webpack')({ mode: 'production', context: '$dir', entry: './$name.mjs', externals: Object.fromEntries('$peers'.split(' ').map((name) => [name, name.replace(/\W/g, '_')])),
    output: { path: '$dir', filename: '$name.2.js' } },
    (error, stats) => { if (error || stats.hasErrors()) throw error ?? stats.toString(); })"
  for file in $name.[12].js; do
    node -e "vm.runInNewContext(fs.readFileSync('$file', 'utf8'), { self: {}, TextDecoder, TextEncoder })"
    size=$(wc -c <$file); echo "$file: $size bytes of ${job#*:}"; [ "$size" -le "${job#*:}" ]
  done
done
