/** `npm run schema`: writes schema/result.schema.json, the layout of what `toJson` writes, from the types of the results. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { ArrayType, createFormatter, createParser, createProgram, NumberType, SchemaGenerator } from 'ts-json-schema-generator';

const path = 'schema/result.schema.json';
const config = {
  path: 'src/methods/index.ts',
  tsconfig: 'tsconfig.json',
  jsDoc: 'extended',
  additionalProperties: false,
  skipTypeCheck: true,
};

/** Each layout that a text can have, and its type. */
const layouts = [
  'TensionResult',
  'CurveResult',
  'CompressionResult',
  'BendingResult',
  'ShearResult',
  'BrinellResult',
  'CuppingResult',
  'UnloadingResult',
  'ReplicatesResult',
];

/** JSON has arrays of numbers where a result has typed arrays. */
const columns = {
  supportsNode: (node) => /^(Float64Array|ArrayLike)\b/.test(node.typeName?.getText() ?? ''),
  createType: () => new ArrayType(new NumberType()),
};

/** Draft 07, which the generator writes, as draft 2020-12: definitions and tuples are named otherwise. */
function modern(schema) {
  if (Array.isArray(schema)) return schema.map(modern);
  if (typeof schema !== 'object' || schema === null) return schema;
  const { items, maxItems, $ref, ...rest } = schema;
  if (typeof rest.description === 'string') rest.description = rest.description.replace(/ *\{@link +(\w+) *\} */g, ' $1 ').trim();
  const own = Object.fromEntries(Object.entries(rest).map(([name, one]) => [name, modern(one)]));
  if ($ref !== undefined) return { ...own, $ref: plain($ref).replace('#/definitions/', '#/$defs/') };
  if (!Array.isArray(items)) return { ...own, ...(items && { items: modern(items) }), ...(maxItems !== undefined && { maxItems }) };
  return { ...own, prefixItems: items.map(modern), items: false };
}

/** `Columns<number[]>` as a name: `Columns`. */
const plain = (name) => decodeURIComponent(name).replace(/<.*>/, '');

/** A layout with the version that `toJson` puts before it. */
const versioned = (schema) => ({
  ...schema,
  properties: { schemaVersion: { const: 1, description: 'Version of this layout.' }, ...schema.properties },
  required: ['schemaVersion', ...schema.required],
});

/** The schema as text. */
export async function resultSchema() {
  const program = createProgram(config);
  const parser = createParser(program, config, (chain) => chain.addNodeParser(columns));
  const generator = new SchemaGenerator(program, parser, createFormatter(config), config);
  const $defs = {};
  for (const layout of layouts) {
    const { definitions, ...root } = generator.createSchema(layout);
    delete root.$schema;
    for (const [name, one] of Object.entries({ [layout]: root, ...definitions })) $defs[plain(name)] = modern(one);
    $defs[layout] = versioned($defs[layout]);
  }
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Result of a mechanical test',
    description:
      'What toJson of the package testpiece writes. Units are N, mm, MPa, s and N·mm, strains are ratios; what is not known is absent; numbers carry all their digits.',
    anyOf: layouts.map((layout) => ({ $ref: `#/$defs/${layout}` })),
    $defs,
  };
  return format(JSON.stringify(schema), { ...(await resolveConfig(path)), parser: 'json' });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(path, await resultSchema());
